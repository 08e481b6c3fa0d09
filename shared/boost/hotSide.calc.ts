import { calculation, optional } from '../calculation/calculation.ts'
import { at } from './point.ts'
import { hotMaterialOf, hotSideLimit } from './fields.ts'
import { hotSideLimitOf } from './hotSideLimitOf.ts'
import { at as cooling } from '../cooling/point.ts'

export default calculation({
  id: 'hot-side-temperature', title: 'What the hot side stands', theme: 'turbo', article: 'hot-side-materials-and-heat', cautions: ['hot-metal', 'exhaust-gas', 'model-only'],
  asks: 'Up to what gas temperature is the hot side’s material meant to run?',
  in: {
    material: hotMaterialOf, stated: optional(hotSideLimit), gas: cooling.exhaustTemperature,
  },
  out: { limit: at.hotSideTemperature },
  curve: ['stated', 'limit'],
  answer({ material, stated }) {
    return { limit: stated ?? hotSideLimitOf({ material }) }
  },
  says: ({ gas, limit }) => gas > limit
    ? 'The gas comes at {gas}, above the {limit} of the hot side: it will scale, sag or crack.'
    : 'The hot side is meant for {limit}; the gas comes at {gas}.',
  leavesOut: 'Strength at heat, weight that hangs on the pipes, and how much cooler the metal is than the gas.',
})

import { calculation } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { regulatorRefers, regulatorSetting, regulatorStands } from './fields.ts'
import { nozzleDropOf } from './nozzleDropOf.ts'
import { at } from './point.ts'
import { pressureDownstream } from './pressureDownstream.ts'
import { pressureUpstream } from './pressureUpstream.ts'
import { referencedPressure } from './referencedPressure.ts'

export default calculation({
  id: 'rail-pressure',
  title: 'Rail pressure and what is left across the nozzles',
  theme: 'fuel',
  asks: 'What pressure stands in the rail, and how much of it is left across the first and the last nozzle?',
  article: 'pump-regulator-and-voltage',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: { setting: regulatorSetting, reference: regulatorRefers, place: regulatorStands, manifold: engine.manifold, outside: siteAirPressure, feedLoss: at.feedLoss, linkLoss: at.linkLoss },
  out: { rail: at.railPressure, drop: at.drop, lastDrop: at.lastInjectorDrop },
  curve: ['manifold', 'lastDrop'],
  answer({ setting, reference, place, manifold, outside, feedLoss, linkLoss }) {
    const held = reference === 'manifold' ? referencedPressure({ setting, manifold, outside }) : setting
    const rail = place === 'after' ? pressureUpstream({ after: held, loss: linkLoss }) : pressureDownstream({ before: held, loss: feedLoss })
    const last = place === 'after' ? held : pressureDownstream({ before: rail, loss: linkLoss })
    return { rail, drop: nozzleDropOf({ rail, outside, manifold }), lastDrop: nozzleDropOf({ rail: last, outside, manifold }) }
  },
  says: ({ reference }) => reference === 'manifold'
    ? 'The rail stands at {rail} and rises one for one with the manifold; {drop} is left across the first nozzle and {lastDrop} across the last.'
    : 'The rail stands at {rail} whatever the manifold does: at {manifold} only {lastDrop} is left across the last nozzle.',
  leavesOut: 'A pump that falls short, the slope of the regulator over flow, and pressure waves in the rail.',
})

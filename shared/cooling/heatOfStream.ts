import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, endDifference, heatFlow } from './quantities.ts'

/** Heat that a stream takes up or gives off by warming or cooling. */
export const about = {
  name: 'Heat of a stream',
  in: { rate: capacityRateOf, change: role(endDifference, 'ΔT', 'Change of temperature') },
  out: heatFlow,
  equation: 'rate * change',
  source: ['definition', 'mass flow times specific heat times change of temperature'],
} as const satisfies About

export const heatOfStream = formula<typeof about>('heat-of-stream', {}, ({ rate, change }) => rate * change)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, effectivenessValue, heatFlow, inletDifferenceOf } from './quantities.ts'


/** Heat that a cooler passes. */
export const about = {
  name: 'Heat exchanged',
  in: { effectiveness: effectivenessValue, one: role(capacityRateOf, 'C_1', 'Capacity rate of one stream'), other: role(capacityRateOf, 'C_2', 'Capacity rate of the other stream'), difference: inletDifferenceOf },
  out: heatFlow,
  equation: 'effectiveness * min(one, other) * difference',
  source: ['definition', 'effectiveness'],
} as const satisfies About

export const exchangedHeat = formula<typeof about>('exchanged-heat', {}, ({ effectiveness, one, other, difference }) => effectiveness * Math.min(one, other) * difference)

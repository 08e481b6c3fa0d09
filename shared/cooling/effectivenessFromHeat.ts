import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, effectivenessValue, heatFlow, inletDifferenceOf } from './quantities.ts'


/** What a cooler did at one point, against the most that the second law allows. */
export const about = {
  name: 'Effectiveness at a rated point',
  in: { heat: heatFlow, one: role(capacityRateOf, 'C_1', 'Capacity rate of one stream'), other: role(capacityRateOf, 'C_2', 'Capacity rate of the other stream'), difference: inletDifferenceOf },
  out: effectivenessValue,
  equation: 'heat / (min(one, other) * difference)',
  source: ['definition', 'heat over the greatest heat possible'],
} as const satisfies About

export const effectivenessFromHeat = formula<typeof about>('effectiveness-from-heat', {}, ({ heat, one, other, difference }) => heat / (Math.min(one, other) * difference))

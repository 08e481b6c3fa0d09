import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, capacityRatioOf } from './quantities.ts'


/** Weaker stream over stronger: 0 where one stream does not change temperature, 1 where both change alike. */
export const about = {
  name: 'Capacity ratio',
  in: { one: role(capacityRateOf, 'C_1', 'Capacity rate of one stream'), other: role(capacityRateOf, 'C_2', 'Capacity rate of the other stream') },
  out: capacityRatioOf,
  equation: 'min(one, other) / max(one, other)',
  source: ['definition', 'smaller over larger capacity rate'],
} as const satisfies About

export const capacityRatio = formula<typeof about>('capacity-ratio', {}, ({ one, other }) => Math.min(one, other) / Math.max(one, other))

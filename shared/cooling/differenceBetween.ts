import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { endDifference, surfaceTemperatureOf } from './quantities.ts'

/** Difference between two temperatures. */
export const about = {
  name: 'Difference between two temperatures',
  in: { hot: role(surfaceTemperatureOf, 'T_h', 'Warmer'), cold: role(surfaceTemperatureOf, 'T_c', 'Colder') },
  out: endDifference,
  equation: 'hot - cold',
  source: ['definition', 'difference of two temperatures'],
  sample: { hot: [600, 1300], cold: [260, 500] },
} as const satisfies About

export const differenceBetween = formula<typeof about>('difference-between', {}, ({ hot, cold }) => hot - cold)

import { formula, type About } from '../formula/formula.ts'
import { boilMarginOf, boilingPointOf, coolantTemperatureOf } from './quantities.ts'

/** How far the bulk of the coolant stands below boiling. */
export const about = {
  name: 'Boil margin',
  in: { boiling: boilingPointOf, coolant: coolantTemperatureOf },
  out: boilMarginOf,
  equation: 'boiling - coolant',
  source: ['definition', 'difference of two temperatures'],
} as const satisfies About

export const marginToBoiling = formula<typeof about>('margin-to-boiling', {}, ({ boiling, coolant }) => boiling - coolant)

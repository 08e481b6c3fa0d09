import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange, fuelSpread } from './quantities.ts'

/** The same amount of fuel, missing instead of surplus. */
export const about = {
  name: 'Fuel missing',
  in: { spread: fuelSpread },
  out: role(fuelChange, '-s', 'Fuel less than meant, as a share'),
  equation: '-spread',
  source: ['definition', 'a spread lies to both sides'],
} as const satisfies About

export const lessOf = formula<typeof about>('less-of', {}, ({ spread }) => -spread)

import { lambda } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange } from './quantities.ts'

/** Lambda of a charge that gets more or less fuel than was meant. */
export const about = {
  name: 'Lambda after a change of fuel',
  in: { lambda, change: role(fuelChange, 'δ', 'Fuel more than meant, as a share') },
  out: role(lambda, 'λ_δ', 'Lambda of that charge'),
  equation: 'lambda / (1 + change)',
  source: ['definition', 'lambda goes with one over fuel while the air stays'],
} as const satisfies About

export const lambdaOfFuelChange = formula<typeof about>('lambda-of-fuel-change', {}, ({ lambda: meant, change }) => meant / (1 + change))

import { lambda } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange } from './quantities.ts'

/** Lambda after a shift by premix. */
export const about = {
  name: 'Lambda after a shift',
  in: { lambda, shift: role(fuelChange, 'Δλ', 'Shift of lambda, as a share') },
  out: role(lambda, 'λ_p', 'Lambda after the shift'),
  equation: 'lambda * (1 + shift)',
  source: ['definition', 'a relative shift'],
} as const satisfies About

export const shiftedLambda = formula<typeof about>('shifted-lambda', {}, ({ lambda: meant, shift }) => meant * (1 + shift))

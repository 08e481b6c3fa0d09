import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { blendShare, blendingNumber } from './quantities.ts'

/** Blending number of two oils poured together. */
export const about = {
  name: 'Blending number of a blend',
  in: { share: blendShare, number1: role(blendingNumber, 'VBN_1', 'Blending number of the first oil'), number2: role(blendingNumber, 'VBN_2', 'Blending number of the second oil') },
  out: blendingNumber,
  equation: 'share * number1 + (1 - share) * number2',
  source: ['maples-refinery', 'viscosity blending number, added by mass'],
} as const satisfies About

export const refutasMix = formula<typeof about>('refutas-mix', {}, ({ share, number1, number2 }) => share * number1 + (1 - share) * number2)

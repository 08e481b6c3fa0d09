import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { lossCoefficient } from './quantities.ts'

/** Loss coefficient of two passages one behind the other. */
export const about = {
  name: 'Loss coefficients in a row',
  in: { first: role(lossCoefficient, 'K_1', 'Loss coefficient of the first'), second: role(lossCoefficient, 'K_2', 'Loss coefficient of the second') },
  out: lossCoefficient,
  equation: 'first + second',
  source: ['derived', 'losses at the same flow and density add'],
} as const satisfies About

export const coefficientSum = formula<typeof about>('coefficient-sum', {}, ({ first, second }) => first + second)

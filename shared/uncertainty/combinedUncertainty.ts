import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { standardUncertainty } from './quantities.ts'
import { rootSum } from './rootSum.ts'

/** The first-order sum, for four independent parts. A build's margins put as many together as it has numbers that are not exact. */
export const about = {
  name: 'Combined standard uncertainty',
  in: {
    a: role(standardUncertainty, 'c_1 u_1', 'First part'), b: role(standardUncertainty, 'c_2 u_2', 'Second part'),
    c: role(standardUncertainty, 'c_3 u_3', 'Third part'), d: role(standardUncertainty, 'c_4 u_4', 'Fourth part'),
  },
  out: role(standardUncertainty, 'u_c', 'Combined standard uncertainty'),
  equation: 'sqrt(a^2 + b^2 + c^2 + d^2)',
  source: ['jcgm-100', '5.1.2, equation 10'],
  notes: 'Each part is the sensitivity of the result to one input times that input’s standard uncertainty. Exact only where the result is linear in its inputs and they do not depend on one another.',
} as const satisfies About

export const combinedUncertainty = formula<typeof about>('combined-uncertainty', {}, ({ a, b, c, d }) => rootSum([a, b, c, d]))

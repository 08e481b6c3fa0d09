import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { endDifference, meanDifferenceOf } from './quantities.ts'


/** Mean difference between two streams whose difference changes along the cooler. */
export const about = {
  name: 'Logarithmic mean difference',
  in: { first: role(endDifference, 'ΔT_1', 'Difference at one end'), second: role(endDifference, 'ΔT_2', 'Difference at the other end') },
  out: meanDifferenceOf,
  equation: '(first - second) / log(first / second)',
  source: ['incropera', 'equation 11.14'],
  notes: 'Parallel and counter flow. At equal ends it is that difference, its limit.',
  sample: { first: [60, 300], second: [0.5, 50] },
} as const satisfies About

export const meanDifference = formula<typeof about>('mean-difference', {}, ({ first, second }) => {
  const change = (first - second) / second
  // Equal ends make 0 / 0; the mean is then the end itself, and close to it a short series is exact enough.
  if (Math.abs(change) < 1e-4) return second * (1 + change / 2 - (change * change) / 12)
  return (first - second) / Math.log1p(change)
})

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { slenderness, tableWeight } from './quantities.ts'

/** How much each of the four bearing tables counts for a bearing of another shape. */
export const about = {
  name: 'Weights of the bearing tables',
  in: { slenderness },
  out: {
    endless: role(tableWeight, 'w_∞', 'Weight of the endless bearing'), square: role(tableWeight, 'w_1', 'Weight of length equal to diameter'),
    half: role(tableWeight, 'w_½', 'Weight of half the diameter'), quarter: role(tableWeight, 'w_¼', 'Weight of a quarter of the diameter'),
  },
  equation: {
    endless: '-(1 - slenderness) * (1 - 2 * slenderness) * (1 - 4 * slenderness) / (8 * slenderness^3)',
    square: '(1 - 2 * slenderness) * (1 - 4 * slenderness) / (3 * slenderness^3)',
    half: '-(1 - slenderness) * (1 - 4 * slenderness) / (4 * slenderness^3)',
    quarter: '(1 - slenderness) * (1 - 2 * slenderness) / (24 * slenderness^3)',
  },
  sample: { slenderness: [0.25, 4] },
  source: ['shigley-bearings', 'equation 12-16, from Raimondi and Boyd'],
} as const satisfies About

export const slendernessWeights = formula<typeof about>('slenderness-weights', { slenderness: [0.25, 1000] }, ({ slenderness: x }) => {
  const cube = x ** 3
  return {
    endless: (-(1 - x) * (1 - 2 * x) * (1 - 4 * x)) / (8 * cube),
    square: ((1 - 2 * x) * (1 - 4 * x)) / (3 * cube),
    half: (-(1 - x) * (1 - 4 * x)) / (4 * cube),
    quarter: ((1 - x) * (1 - 2 * x)) / (24 * cube),
  }
})

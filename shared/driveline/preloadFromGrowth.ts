import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { jointStiffness, preloadChange, thermalGrowth } from './quantities.ts'

/** Preload that a joint gains when its stack grows over its bolt: both give way. `f / (1 / k_b + 1 / k_s)`, newtons. */
export const about = {
  name: 'Preload gained from growth',
  in: { growth: thermalGrowth, bolt: role(jointStiffness, 'k_b', 'Stiffness of the bolt'), stack: role(jointStiffness, 'k_s', 'Stiffness of the stack at one bolt') },
  out: preloadChange,
  equation: 'growth / (1 / bolt + 1 / stack)',
  source: ['vdi-2230-1', 'additional thermal load, resiliences in series'],
  notes: 'Elastic; seals, gaskets and settling left out.',
} as const satisfies About

export const preloadFromGrowth = formula<typeof about>('preload-from-growth', {}, ({ growth, bolt, stack }) => growth / (1 / bolt + 1 / stack))

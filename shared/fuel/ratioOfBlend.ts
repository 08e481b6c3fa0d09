import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelMassShare, stoichiometricRatio } from './quantities.ts'

/** Stoichiometric ratio of a blend of two fuels: each part brings its own need of air. */
export const about = {
  name: 'Stoichiometric ratio of a blend',
  in: { massShare: fuelMassShare, ratio: role(stoichiometricRatio, 'L_1', 'Ratio of this part'), otherRatio: role(stoichiometricRatio, 'L_2', 'Ratio of the rest') },
  out: stoichiometricRatio,
  equation: 'massShare * ratio + (1 - massShare) * otherRatio',
  source: ['derived', 'air of the parts adds by mass; exact'],
} as const satisfies About

export const ratioOfBlend = formula<typeof about>('ratio-of-blend', {}, ({ massShare, ratio, otherRatio }) => massShare * ratio + (1 - massShare) * otherRatio)

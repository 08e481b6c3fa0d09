import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boostPressure, manifoldPressure, overshootShare } from './quantities.ts'

/** Highest pressure that a sensor has to read: the manifold’s, and boost that overshoots. */
export const about = {
  name: 'Manifold pressure with overshoot',
  in: { manifold: manifoldPressure, boost: boostPressure, overshoot: overshootShare },
  out: role(manifoldPressure, 'p_need', 'Highest pressure that must be read'),
  equation: 'manifold + (boost + abs(boost)) / 2 * overshoot',
  source: ['derived', 'boost above target adds to the absolute pressure; vacuum does not overshoot'],
} as const satisfies About

export const withOvershoot = formula<typeof about>('with-overshoot', {}, ({ manifold, boost, overshoot }) => manifold + Math.max(0, boost) * overshoot)

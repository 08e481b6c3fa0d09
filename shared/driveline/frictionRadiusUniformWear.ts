import { formula, type About } from '../formula/formula.ts'
import { facingInnerDiameter, facingOuterDiameter, frictionRadius } from './quantities.ts'

/** Radius at which the friction of a bedded-in facing acts: wear evens out pressure times radius. `(D + d) / 4`, metres. */
export const about = {
  name: 'Friction radius, uniform wear',
  in: { outer: facingOuterDiameter, inner: facingInnerDiameter },
  out: frictionRadius,
  equation: '(outer + inner) / 4',
  source: ['shigley-machine-design', 'section 16-5, uniform wear'],
  notes: 'Source states no range. The smaller of the two radii, and the one a facing comes to once bedded in.',
} as const satisfies About

export const frictionRadiusUniformWear = formula<typeof about>('friction-radius-uniform-wear', {}, ({ outer, inner }) => (outer + inner) / 4)

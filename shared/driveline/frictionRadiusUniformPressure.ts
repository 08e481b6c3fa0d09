import { formula, type About } from '../formula/formula.ts'
import { mm } from '../quantity/si.ts'
import { facingInnerDiameter, facingOuterDiameter, frictionRadius } from './quantities.ts'

/** Radius at which the friction of a new, evenly pressed facing acts. `(D³ − d³) / (3 (D² − d²))`, metres, D above d. */
export const about = {
  name: 'Friction radius, uniform pressure',
  in: { outer: facingOuterDiameter, inner: facingInnerDiameter },
  out: frictionRadius,
  equation: '(outer^3 - inner^3) / (3 * (outer^2 - inner^2))',
  source: ['shigley-machine-design', 'section 16-5, uniform pressure'],
  notes: 'Source states no range. Holds for a new facing before it beds in.',
  sample: { outer: [mm(200), mm(350)], inner: [mm(60), mm(190)] },
} as const satisfies About

export const frictionRadiusUniformPressure = formula<typeof about>('friction-radius-uniform-pressure', {},
  ({ outer, inner }) => (outer ** 3 - inner ** 3) / (3 * (outer ** 2 - inner ** 2)))

import { formula, type About } from '../formula/formula.ts'
import { mm } from '../quantity/si.ts'
import { clampLoad, facingInnerDiameter, facingOuterDiameter, facingPressure } from './quantities.ts'

/** Highest pressure on a bedded-in facing, at its inner edge. `2 F / (π d (D − d))`, pascals, D above d. */
export const about = {
  name: 'Pressure at the inner edge, uniform wear',
  in: { clamp: clampLoad, outer: facingOuterDiameter, inner: facingInnerDiameter },
  out: facingPressure,
  equation: '2 * clamp / (pi * inner * (outer - inner))',
  source: ['shigley-machine-design', 'equation 16-23'],
  notes: 'Source states no range.',
  sample: { outer: [mm(200), mm(350)], inner: [mm(60), mm(190)] },
} as const satisfies About

export const facingPressureUniformWear = formula<typeof about>('facing-pressure-uniform-wear', {},
  ({ clamp, outer, inner }) => (2 * clamp) / (Math.PI * inner * (outer - inner)))

import { formula, type About } from '../formula/formula.ts'
import { mm } from '../quantity/si.ts'
import { clampLoad, facingInnerDiameter, facingOuterDiameter, facingPressure } from './quantities.ts'

/** Pressure on a new facing, even over its face. `4 F / (π (D² − d²))`, pascals, D above d. */
export const about = {
  name: 'Pressure on the facing, uniform pressure',
  in: { clamp: clampLoad, outer: facingOuterDiameter, inner: facingInnerDiameter },
  out: facingPressure,
  equation: '4 * clamp / (pi * (outer^2 - inner^2))',
  source: ['shigley-machine-design', 'equation 16-25'],
  notes: 'Source states no range.',
  sample: { outer: [mm(200), mm(350)], inner: [mm(60), mm(190)] },
} as const satisfies About

export const facingPressureUniformPressure = formula<typeof about>('facing-pressure-uniform-pressure', {},
  ({ clamp, outer, inner }) => (4 * clamp) / (Math.PI * (outer ** 2 - inner ** 2)))

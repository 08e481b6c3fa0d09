import { formula, type About } from '../formula/formula.ts'
import { colburnFactor, coreDepth, finPitch, finThickness, louvreAngle, louvreLength, louvrePitch, louvreReynolds, tubePitch, tubeThickness } from './quantities.ts'

/** Heat transfer of louvred fins between flat tubes, from 91 samples. */
export const about = {
  name: 'Colburn factor of louvred fins',
  in: { reynolds: louvreReynolds, pitch: louvrePitch, angle: louvreAngle, length: louvreLength, finPitch, fin: finThickness, depth: coreDepth, tubePitch, tube: tubeThickness },
  out: colburnFactor,
  equation: 'reynolds^(-0.49) * (angle / (pi / 2))^0.27 * (finPitch / pitch)^(-0.14) * ((tubePitch - tube) / pitch)^(-0.29) * (depth / pitch)^(-0.23) * (length / pitch)^0.68 * (tubePitch / pitch)^(-0.28) * (fin / pitch)^(-0.05)',
  // Tubes that touch leave no room for a fin.
  sample: { tubePitch: [0.0065, 0.016], tube: [0.001, 0.006] },
  source: ['chang-wang-1997', 'equation of the generalised correlation'],
  notes: 'The source tells nine in ten of its data within 15 %. It covers corrugated fins brazed to flat tubes, Reynolds numbers of 30 to 5,000.',
} as const satisfies About

export const louvreColburn = formula<typeof about>('louvre-colburn', { reynolds: [30, 5000] }, ({ reynolds, pitch, angle, length, finPitch: spacing, fin, depth, tubePitch: apart, tube }) =>
  reynolds ** -0.49 * (angle / (Math.PI / 2)) ** 0.27 * (spacing / pitch) ** -0.14 * ((apart - tube) / pitch) ** -0.29 * (depth / pitch) ** -0.23 * (length / pitch) ** 0.68 * (apart / pitch) ** -0.28 * (fin / pitch) ** -0.05)

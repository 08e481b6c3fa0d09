import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coreDepth, coreSurface, coreWidth, finPitch, tubePitch, tubeThickness } from './quantities.ts'

/** Both sides of all fins. */
export const about = {
  name: 'Surface of the fins',
  in: { width: role(coreWidth, 'B', 'Width across the tubes'), height: role(coreWidth, 'H', 'Length of the tubes'), depth: coreDepth, tubePitch, tube: tubeThickness, finPitch },
  out: role(coreSurface, 'A_f', 'Surface of the fins'),
  equation: '2 * (tubePitch - tube) * depth * height / finPitch * width / tubePitch',
  source: ['derived', 'fins between neighbouring tubes, both sides'],
} as const satisfies About

export const finSurface = formula<typeof about>('fin-surface', {}, ({ width, height, depth, tubePitch: pitch, tube, finPitch: spacing }) => (((2 * (pitch - tube) * depth * height) / spacing) * width) / pitch)

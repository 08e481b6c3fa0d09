import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coreDepth, coreSurface, coreWidth, finPitch, finThickness, tubePitch } from './quantities.ts'

/** Flat sides of the tubes between the fins. */
export const about = {
  name: 'Surface of the tubes on the air’s side',
  in: { width: role(coreWidth, 'B', 'Width across the tubes'), height: role(coreWidth, 'H', 'Length of the tubes'), depth: coreDepth, tubePitch, finPitch, fin: finThickness },
  out: role(coreSurface, 'A_t', 'Bare surface of the tubes'),
  equation: '2 * depth * height * (1 - fin / finPitch) * width / tubePitch',
  source: ['derived', 'two flat sides of each tube less the fins’ roots'],
} as const satisfies About

export const tubeSurface = formula<typeof about>('tube-surface', {}, ({ width, height, depth, tubePitch: pitch, finPitch: spacing, fin }) => (2 * depth * height * (1 - fin / spacing) * width) / pitch)

import { formula, type About } from '../formula/formula.ts'
import { displacement, eccentricity, generatingRadius, housingWidth, parallelShift } from './quantities.ts'

/** Displacement of one chamber by the usual product. Exact without shift, a little high with one. */
export const about = {
  name: 'Displacement by the short product',
  in: { generatingRadius, eccentricity, width: housingWidth, shift: parallelShift },
  out: displacement,
  equation: '3 * sqrt(3) * eccentricity * (generatingRadius + shift) * width',
  source: ['bensinger-1973', 'pages 64–65'],
  notes: 'Source states no range. With a shift of 3 mm it is about 0.07 % high.',
} as const satisfies About

export const shortDisplacement = formula<typeof about>('short-displacement', {}, ({ generatingRadius: R, eccentricity: e, width, shift }) => 3 * Math.sqrt(3) * e * (R + shift) * width)

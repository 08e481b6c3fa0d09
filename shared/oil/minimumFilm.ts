import { formula, type About } from '../formula/formula.ts'
import { filmShare, filmThickness, radialClearance } from './quantities.ts'

/** Thinnest oil film from its share of the radial clearance. */
export const about = {
  name: 'Minimum film',
  in: { share: filmShare, clearance: radialClearance },
  out: filmThickness,
  equation: 'share * clearance',
  source: ['definition', 'h_0 = c (1 − ε)'],
} as const satisfies About

export const minimumFilm = formula<typeof about>('minimum-film', {}, ({ share, clearance }) => share * clearance)

import { formula, type About } from '../formula/formula.ts'
import { filmThickness, journalDiameter } from './quantities.ts'

/** Least film that general machinery is designed for. */
export const about = {
  name: 'Film asked of general machinery',
  in: { diameter: journalDiameter },
  out: filmThickness,
  equation: '0.0002 + 0.00004 * diameter',
  units: { diameter: 'in', out: 'in' },
  source: ['trumpler', 'h_0 ≥ 0.0002 + 0.00004 d, inches, for ground journals'],
  notes: 'Guidance for machinery with steady loads and no thought for size. Engine bearings run thinner than this; it is shown for scale, no margin rests on it.',
} as const satisfies About

export const trumplerFilm = formula<typeof about>('trumpler-film', {}, ({ diameter }) => 0.0002 * 0.0254 + 0.00004 * diameter)

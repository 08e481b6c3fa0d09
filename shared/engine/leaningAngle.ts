import { formula, type About } from '../formula/formula.ts'
import { eccentricity, generatingRadius, leaningAngle as leaningAngleOf } from './quantities.ts'

/** How far the apex seal leans from square to the housing, at most. */
export const about = {
  name: 'Largest leaning angle',
  in: { generatingRadius, eccentricity },
  out: leaningAngleOf,
  equation: 'asin(3 * eccentricity / generatingRadius)',
  source: ['yamamoto-1981', 'basic geometry: largest oscillating angle of the apex seal'],
  notes: 'Holds while the generating radius is more than three times the eccentricity. The tip radius of the seal must take this angle both ways.',
} as const satisfies About

export const leaningAngle = formula<typeof about>('leaning-angle', {}, ({ generatingRadius: R, eccentricity: e }) => Math.asin((3 * e) / R))

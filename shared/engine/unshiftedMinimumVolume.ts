import { formula, type About } from '../formula/formula.ts'
import { eccentricity, generatingRadius, housingWidth, minimumVolume } from './quantities.ts'

/** Smallest chamber volume of a rotor without recess in a housing without shift. */
export const about = {
  name: 'Theoretical minimum volume without shift',
  in: { generatingRadius, eccentricity, width: housingWidth },
  out: minimumVolume,
  equation: 'width * (pi / 3 * eccentricity^2 - 3 * sqrt(3) / 2 * eccentricity * generatingRadius + 2 * eccentricity * generatingRadius * cos(asin(3 * eccentricity / generatingRadius)) + (2 / 9 * generatingRadius^2 + 4 * eccentricity^2) * asin(3 * eccentricity / generatingRadius))',
  source: ['yamamoto-1981', 'basic geometry: minimum volume by the largest leaning angle'],
  notes: 'Holds while the generating radius is more than three times the eccentricity.',
} as const satisfies About

export const unshiftedMinimumVolume = formula<typeof about>('unshifted-minimum-volume', {}, ({ generatingRadius: R, eccentricity: e, width }) => {
  const lean = Math.asin((3 * e) / R)
  return width * ((Math.PI / 3) * e * e - 1.5 * Math.sqrt(3) * e * R + 2 * e * R * Math.cos(lean) + ((2 / 9) * R * R + 4 * e * e) * lean)
})

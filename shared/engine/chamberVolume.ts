import { formula, type About } from '../formula/formula.ts'
import { flankArc } from './flankArc.ts'
import { housingArc } from './housingArc.ts'
import { unshiftedMinimumVolume } from './unshiftedMinimumVolume.ts'
import { chamberVolume as chamberVolumeOf, eccentricity, generatingRadius, housingWidth, parallelShift, shaftAngle } from './quantities.ts'

/** Volume of one chamber over the shaft angle, flank without recess. It repeats after 540°: smallest at 0°, largest at 270°. */
export const about = {
  name: 'Chamber volume over shaft angle',
  in: { generatingRadius, eccentricity, width: housingWidth, shift: parallelShift, shaftAngle },
  out: chamberVolumeOf,
  steps: [
    'Without shift: V_min + (3 √3 / 2) e R b (1 - cos(2θ/3)).',
    'A parallel shift a adds a b (housing arc at θ less length of the flank).',
  ],
  source: ['yamamoto-1981', 'volume over shaft angle; the shift derived as area between a curve and its parallel'],
  notes: 'Add the recess, gaps and plug holes for the real chamber.',
} as const satisfies About

export const chamberVolume = formula<typeof about>('chamber-volume', {}, ({ generatingRadius, eccentricity, width, shift, shaftAngle: turned }) => {
  const base = unshiftedMinimumVolume({ generatingRadius, eccentricity, width }) + 1.5 * Math.sqrt(3) * eccentricity * generatingRadius * width * (1 - Math.cos((2 * turned) / 3))
  if (shift === 0) return base
  return base + shift * width * (housingArc({ generatingRadius, eccentricity, shaftAngle: turned }) - flankArc({ generatingRadius, eccentricity }))
})

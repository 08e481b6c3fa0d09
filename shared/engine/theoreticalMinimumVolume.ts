import { formula, type About } from '../formula/formula.ts'
import { flankArc } from './flankArc.ts'
import { housingArc } from './housingArc.ts'
import { unshiftedMinimumVolume } from './unshiftedMinimumVolume.ts'
import { eccentricity, generatingRadius, housingWidth, minimumVolume, parallelShift } from './quantities.ts'

/** Smallest volume between a rotor flank without recess and the housing. */
export const about = {
  name: 'Theoretical minimum volume',
  in: { generatingRadius, eccentricity, width: housingWidth, shift: parallelShift },
  out: minimumVolume,
  steps: ['Without shift: by the largest leaning angle.', 'A parallel shift a adds a b (housing arc at smallest volume less length of the flank).'],
  source: ['derived', 'area between a curve and its parallel; without shift it is Yamamoto’s'],
} as const satisfies About

export const theoreticalMinimumVolume = formula<typeof about>('theoretical-minimum-volume', {}, ({ generatingRadius, eccentricity, width, shift }) => {
  const base = unshiftedMinimumVolume({ generatingRadius, eccentricity, width })
  if (shift === 0) return base
  return base + shift * width * (housingArc({ generatingRadius, eccentricity, shaftAngle: 0 }) - flankArc({ generatingRadius, eccentricity }))
})

import { formula, type About } from '../formula/formula.ts'
import { chamberDisplacement } from './chamberDisplacement.ts'
import { describedBy, displacement, eccentricity, generatingRadius, housingWidth, parallelShift } from './quantities.ts'

/** The displacement a build reckons with: from its dimensions, or as typed in. */
export const about = {
  name: 'Displacement as described',
  in: { describedBy, generatingRadius, eccentricity, width: housingWidth, shift: parallelShift, stated: displacement },
  out: displacement,
  steps: ['By its housing and rotor: the displacement of one chamber from its dimensions.', 'By its displacement: the number as stated.'],
  source: ['definition', 'the build sheet says which description counts'],
} as const satisfies About

export const describedDisplacement = formula<typeof about>('described-displacement', {}, ({ describedBy: by, generatingRadius, eccentricity, width, shift, stated }) =>
  by === 'geometry' ? chamberDisplacement({ generatingRadius, eccentricity, width, shift }) : stated)

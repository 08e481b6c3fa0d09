import { generatingRadius, housingWidth, parallelShift } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { flankArea } from './quantities.ts'

/** Area on which a chamber's pressure pushes a rotor: chord between two apexes times width. */
export const about = {
  name: 'Flank area seen by the gas',
  in: { radius: generatingRadius, shift: parallelShift, width: housingWidth },
  out: flankArea,
  equation: 'sqrt(3) * (radius + shift) * width',
  source: ['derived', 'side of the triangle of apexes; uniform pressure on any flank between two apexes pushes as on their chord'],
} as const satisfies About

export const flankAreaOf = formula<typeof about>('flank-area-of', {}, ({ radius, shift, width }) => Math.sqrt(3) * (radius + shift) * width)

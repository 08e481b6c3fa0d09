import { formula, type About } from '../formula/formula.ts'
import { housingArc } from './housingArc.ts'
import { shortDisplacement } from './shortDisplacement.ts'
import { displacement, eccentricity, generatingRadius, housingWidth, parallelShift } from './quantities.ts'

/** Displacement of one chamber: largest less smallest volume, in step with the volume over the shaft angle. */
export const about = {
  name: 'Displacement of one chamber from its dimensions',
  in: { generatingRadius, eccentricity, width: housingWidth, shift: parallelShift },
  out: displacement,
  steps: [
    'Without shift: 3 √3 e R b.',
    'A parallel shift a moves housing and flank outwards alike; it adds a b (longest less shortest housing arc of the chamber). The terms in a² cancel.',
  ],
  source: ['derived', 'area between a curve and its parallel; without shift it is Yamamoto’s product'],
  notes: 'Side clearance and the recess take no part in displacement: they are there at both ends of the stroke.',
} as const satisfies About

const largest = (3 * Math.PI) / 2

export const chamberDisplacement = formula<typeof about>('chamber-displacement', {}, ({ generatingRadius: R, eccentricity: e, width, shift }) => {
  const base = shortDisplacement({ generatingRadius: R, eccentricity: e, width, shift: 0 })
  if (shift === 0) return base
  const gained = housingArc({ generatingRadius: R, eccentricity: e, shaftAngle: largest }) - housingArc({ generatingRadius: R, eccentricity: e, shaftAngle: 0 })
  return base + shift * width * gained
})

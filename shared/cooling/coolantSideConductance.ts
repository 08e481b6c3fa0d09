import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolerConductance, coreDepth, coreFilm, coreWidth, tubePitch, tubeThickness, tubeWall } from './quantities.ts'

/** Inner surface of all tubes times the film in them. */
export const about = {
  name: 'Conductance of the coolant’s side',
  in: { film: coreFilm, width: role(coreWidth, 'B', 'Width across the tubes'), height: role(coreWidth, 'H', 'Length of the tubes'), tubePitch, tube: tubeThickness, wall: tubeWall, depth: coreDepth },
  out: role(coolerConductance, 'UA_c', 'Conductance of the coolant’s side'),
  equation: 'film * 2 * ((tube - 2 * wall) + (depth - 2 * wall)) * height * width / tubePitch',
  source: ['derived', 'circumference times length times number of tubes'],
} as const satisfies About

export const coolantSideConductance = formula<typeof about>('coolant-side-conductance', {}, ({ film, width, height, tubePitch: apart, tube, wall, depth }) => (film * 2 * (tube - 2 * wall + (depth - 2 * wall)) * height * width) / apart)

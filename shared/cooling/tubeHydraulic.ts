import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coreDepth, tubeThickness, tubeWall } from './quantities.ts'

/** Four times area over wetted circumference, the tube taken as a slot. */
export const about = {
  name: 'Hydraulic diameter of a flat tube',
  in: { tube: tubeThickness, wall: tubeWall, depth: coreDepth },
  out: role(tubeThickness, 'd_t', 'Hydraulic diameter of a tube'),
  equation: '2 * (tube - 2 * wall) * (depth - 2 * wall) / ((tube - 2 * wall) + (depth - 2 * wall))',
  source: ['definition', 'of the hydraulic diameter, a rectangle'],
  notes: 'One row of tubes as deep as the core; round ends left out.',
} as const satisfies About

export const tubeHydraulic = formula<typeof about>('tube-hydraulic', {}, ({ tube, wall, depth }) => (2 * (tube - 2 * wall) * (depth - 2 * wall)) / (tube - 2 * wall + (depth - 2 * wall)))

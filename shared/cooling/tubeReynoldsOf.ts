import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantDensityOf, coolantFlowOf, coolantViscosityOf, coreDepth, coreWidth, tubePitch, tubeReynolds, tubeThickness, tubeWall } from './quantities.ts'

/** Reynolds number of the coolant, all tubes side by side. */
export const about = {
  name: 'Reynolds number in the tubes',
  in: { flow: coolantFlowOf, density: coolantDensityOf, viscosity: coolantViscosityOf, width: role(coreWidth, 'B', 'Width across the tubes'), tubePitch, tube: tubeThickness, wall: tubeWall, depth: coreDepth },
  out: tubeReynolds,
  equation: '2 * flow * density * tubePitch / (width * viscosity * ((tube - 2 * wall) + (depth - 2 * wall)))',
  source: ['definition', 'of the Reynolds number, single pass'],
} as const satisfies About

export const tubeReynoldsOf = formula<typeof about>('tube-reynolds-of', {}, ({ flow, density, viscosity, width, tubePitch: apart, tube, wall, depth }) => (2 * flow * density * apart) / (width * viscosity * (tube - 2 * wall + (depth - 2 * wall))))

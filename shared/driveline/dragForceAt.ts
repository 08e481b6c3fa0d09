import { formula, type About } from '../formula/formula.ts'
import { airDensity } from '../media/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { dragAreaOf, roadForce, speedInGear } from './quantities.ts'

/** Force of the air against the car. `ρ c_w A v² / 2`, newton. */
export const about = {
  name: 'Air drag',
  in: { density: airDensity, area: dragAreaOf, speed: speedInGear },
  out: role(roadForce, 'F_a', 'Air drag'),
  equation: 'density * area * speed^2 / 2',
  source: ['gillespie-dynamics', 'chapter 4, aerodynamic drag'],
} as const satisfies About

export const dragForceAt = formula<typeof about>('drag-force-at', {}, ({ density, area, speed }) => (density * area * speed ** 2) / 2)

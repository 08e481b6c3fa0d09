import { formula, type About } from '../formula/formula.ts'
import { carMass, equivalentMass, finalDrive, gearRatio, inertia, tyreRadius, wheelInertia } from './quantities.ts'

/**
 * Mass that the engine feels when it drives the car in one gear: the car, its wheels, and the engine's own turning parts, which count
 * with the square of the overall ratio. `m + J_w / r² + J (i_g i_f / r)²`, kilograms.
 */
export const about = {
  name: 'Equivalent mass in a gear',
  in: { mass: carMass, wheels: wheelInertia, radius: tyreRadius, engine: inertia, ratio: gearRatio, finalDrive },
  out: equivalentMass,
  equation: 'mass + wheels / radius^2 + engine * (ratio * finalDrive / radius)^2',
  source: ['gillespie-dynamics', 'chapter 2, effective mass of a car in gear'],
  notes: 'Source states no range. Gearbox and shafts left out; losses do not enter the mass.',
} as const satisfies About

export const equivalentMassIn = formula<typeof about>('equivalent-mass-in', {},
  ({ mass, wheels, radius, engine, ratio, finalDrive }) => mass + wheels / radius ** 2 + engine * ((ratio * finalDrive) / radius) ** 2)

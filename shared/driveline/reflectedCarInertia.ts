import { formula, type About } from '../formula/formula.ts'
import { carMass, finalDrive, gearRatio, reflectedInertia, tyreRadius } from './quantities.ts'

/** Inertia of the car as the clutch feels it through the gears. `m (r / (i_g i_f))²`, kg m². */
export const about = {
  name: 'Inertia of the car at the clutch',
  in: { mass: carMass, radius: tyreRadius, ratio: gearRatio, finalDrive },
  out: reflectedInertia,
  equation: 'mass * (radius / (ratio * finalDrive))^2',
  source: ['derived', 'equal kinetic energy on both sides of the gears'],
  notes: 'Wheels and shafts are left out; the equivalent mass brings them in.',
} as const satisfies About

export const reflectedCarInertia = formula<typeof about>('reflected-car-inertia', {},
  ({ mass, radius, ratio, finalDrive }) => mass * (radius / (ratio * finalDrive)) ** 2)

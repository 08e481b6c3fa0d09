import { formula, type About } from '../formula/formula.ts'
import { carMass, clutchTorque, driveEfficiency, finalDrive, gearRatio, pullAway, tyreRadius } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Torque through the slipping clutch that moves the car off at an acceleration. `m a r / (i_g i_f η)`, newton metres. */
export const about = {
  name: 'Clutch torque to pull away',
  in: { mass: carMass, acceleration: pullAway, radius: tyreRadius, ratio: gearRatio, finalDrive, efficiency: driveEfficiency },
  out: role(clutchTorque, 'M_a', 'Clutch torque to pull away'),
  equation: 'mass * acceleration * radius / (ratio * finalDrive * efficiency)',
  source: ['derived', 'force is mass times acceleration, through gears that lose a share'],
  notes: 'Level road; rolling resistance and what spins up the wheels are left out.',
} as const satisfies About

export const clutchTorqueForPull = formula<typeof about>('clutch-torque-for-pull', {},
  ({ mass, acceleration, radius, ratio, finalDrive, efficiency }) => (mass * acceleration * radius) / (ratio * finalDrive * efficiency))

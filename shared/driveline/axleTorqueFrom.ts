import { formula, type About } from '../formula/formula.ts'
import { axleTorque, driveEfficiency, finalDrive, gearboxTorque, gearRatio } from './quantities.ts'

/** Torque at the axle that the engine gives in a gear. `M i_g i_f η`, newton metres, both wheels together. */
export const about = {
  name: 'Torque at the axle from the engine',
  in: { torque: gearboxTorque, ratio: gearRatio, finalDrive, efficiency: driveEfficiency },
  out: axleTorque,
  equation: 'torque * ratio * finalDrive * efficiency',
  source: ['definition', 'of gear ratio and efficiency'],
  notes: 'Steady speed: torque that spins up the wheels is not taken off.',
} as const satisfies About

export const axleTorqueFrom = formula<typeof about>('axle-torque-from', {}, ({ torque, ratio, finalDrive, efficiency }) => torque * ratio * finalDrive * efficiency)

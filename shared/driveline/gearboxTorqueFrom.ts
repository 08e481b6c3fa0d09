import { formula, type About } from '../formula/formula.ts'
import { torque } from '../engine/quantities.ts'
import { clutchTorque, gearboxTorque } from './quantities.ts'

/** Torque that reaches the gearbox: the engine's, but never more than the clutch holds. `min(M, M_c)`, newton metres. */
export const about = {
  name: 'Torque into the gearbox',
  in: { torque, clutch: clutchTorque },
  out: gearboxTorque,
  equation: 'min(torque, clutch)',
  source: ['derived', 'a slipping clutch passes on its slip torque and no more'],
  notes: 'Steady drive. Letting the clutch in at speed asks the clutch’s whole torque of the gearbox, whatever the engine makes.',
} as const satisfies About

export const gearboxTorqueFrom = formula<typeof about>('gearbox-torque-from', {}, ({ torque, clutch }) => Math.min(torque, clutch))

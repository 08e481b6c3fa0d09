import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { torque } from '../engine/quantities.ts'
import { heldTorque, torquePeak } from './quantities.ts'

/** Highest torque of a turn on the housings, from the mean. `k M`, newton metres. */
export const about = {
  name: 'Highest torque on the stack',
  in: { torque, peak: torquePeak },
  out: role(heldTorque, 'M_max', 'Highest torque on the stack'),
  equation: 'torque * peak',
  source: ['definition', 'of the peak over the mean'],
} as const satisfies About

export const peakTorqueOf = formula<typeof about>('peak-torque-of', {}, ({ torque: mean, peak }) => mean * peak)

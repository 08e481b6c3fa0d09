import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { clutchTorque, pedalTravel } from './quantities.ts'

/** Pedal travel between two clutch torques, where torque builds evenly over the take-up. `s (M_2 − M_1) / M_c`, metres. */
export const about = {
  name: 'Pedal between gentle and brisk',
  in: {
    travel: role(pedalTravel, 's_t', 'Pedal travel of the whole take-up'), capacity: clutchTorque,
    gentle: role(clutchTorque, 'M_1', 'Clutch torque of a gentle start'), brisk: role(clutchTorque, 'M_2', 'Clutch torque of a brisk start'),
  },
  out: pedalTravel,
  equation: 'travel * (brisk - gentle) / capacity',
  source: ['derived', 'torque in proportion to travel'],
  notes: 'A cushioned plate builds up slowly at first and faster later, so its gentle end is wider than this.',
  sample: { gentle: [5, 40], brisk: [50, 200] },
} as const satisfies About

export const pedalWindow = formula<typeof about>('pedal-window', {}, ({ travel, capacity, gentle, brisk }) => (travel * (brisk - gentle)) / capacity)

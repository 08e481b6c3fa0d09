import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { axleRatio, clutchRating, efficiency, firstGear, mass, rollingRadius } from './fields.ts'
import { clutchTorque, pedalTravel, pullAway } from './quantities.ts'
import { clutchTorqueForPull } from './clutchTorqueForPull.ts'
import { pedalWindow } from './pedalWindow.ts'

/** Street manners as a length: how much pedal lies between a gentle and a brisk start. */
export default calculation({
  id: 'clutch-take-up',
  title: 'Take-up of a clutch against its pedal',
  theme: 'driveline',
  asks: 'How much pedal lies between a gentle and a brisk start?',
  article: 'clutch-capacity',
  cautions: ['model-only'],
  in: {
    capacity: clutchRating, travel: free(role(pedalTravel, 's_t', 'Pedal travel of the whole take-up'), mm(25)),
    low: free(role(pullAway, 'a_1', 'Gentle start'), 0.5, 'Gentle start'), high: free(role(pullAway, 'a_2', 'Brisk start'), 2.5, 'Brisk start'), mass, radius: rollingRadius, ratio: firstGear, finalDrive: axleRatio, efficiency,
  },
  out: { window: pedalTravel, gentle: role(clutchTorque, 'M_1', 'Clutch torque of a gentle start'), brisk: role(clutchTorque, 'M_2', 'Clutch torque of a brisk start') },
  curve: ['travel', 'window'],
  answer({ capacity, travel, low, high, ...car }) {
    if (!(high > low)) throw new NoAnswer('clutch', 'The brisk start must be the quicker of the two: enter the larger acceleration as the brisk one.')
    const gentle = clutchTorqueForPull({ ...car, acceleration: low }), brisk = clutchTorqueForPull({ ...car, acceleration: high })
    return { gentle, brisk, window: pedalWindow({ travel, capacity, gentle, brisk }) }
  },
  says: () => 'A gentle start takes {gentle} and a brisk one {brisk}: {window} of pedal between them, out of {travel} in which this clutch goes from nothing to {capacity}.',
  leavesOut: 'The cushion’s curve, judder, a sticky cable or release bearing, and the driver’s foot.',
})

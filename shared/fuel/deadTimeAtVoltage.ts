import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coilVoltage } from '../spark/quantities.ts'
import { deadTime } from './quantities.ts'

/** Dead time of an injector at another battery voltage, from its figures at two voltages. */
export const about = {
  name: 'Dead time at a voltage',
  in: {
    deadTime, at: role(coilVoltage, 'U_1', 'Voltage of the first figure'), second: role(deadTime, 't_d2', 'Dead time at the second voltage'),
    secondAt: role(coilVoltage, 'U_2', 'Voltage of the second figure'), voltage: role(coilVoltage, 'U', 'Voltage now'),
  },
  out: role(deadTime, 't_dU', 'Dead time at this voltage'),
  equation: 'deadTime + (second - deadTime) * (1 / voltage - 1 / at) / (1 / secondAt - 1 / at)',
  sample: { at: [13, 15], secondAt: [8, 11], voltage: [8, 15] },
  source: ['derived', 'the coil has to reach one current: while its resistance matters little, the time for that goes with one over voltage'],
  notes: 'Exact at the two voltages; between them a straight line over one over voltage. Below the lower one the resistance of the coil makes the true dead time longer still.',
} as const satisfies About

export const deadTimeAtVoltage = formula<typeof about>('dead-time-at-voltage', {}, ({ deadTime: dead, at, second, secondAt, voltage }) =>
  dead + ((second - dead) * (1 / voltage - 1 / at)) / (1 / secondAt - 1 / at))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure, pressureLoss } from './quantities.ts'

/** Pressure needed before a passage for a pressure behind it. */
export const about = {
  name: 'Pressure before a loss',
  in: { after: role(gasPressure, 'p_b', 'Pressure after'), loss: pressureLoss },
  out: role(gasPressure, 'p_a', 'Pressure before'),
  equation: 'after + loss',
  source: ['definition', 'a pressure loss is a difference of pressures'],
} as const satisfies About

export const pressureBeforeLoss = formula<typeof about>('pressure-before-loss', {}, ({ after, loss }) => after + loss)

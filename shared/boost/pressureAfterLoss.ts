import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure, pressureLoss } from './quantities.ts'

/** Pressure behind a passage. */
export const about = {
  name: 'Pressure after a loss',
  in: { before: role(gasPressure, 'p_a', 'Pressure before'), loss: pressureLoss },
  out: role(gasPressure, 'p_b', 'Pressure after'),
  equation: 'before - loss',
  source: ['definition', 'a pressure loss is a difference of pressures'],
} as const satisfies About

export const pressureAfterLoss = formula<typeof about>('pressure-after-loss', {}, ({ before, loss }) => before - loss)

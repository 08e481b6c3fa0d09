import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { linePressureLoss, railPressure } from './quantities.ts'

/** Pressure after a line: what came in less what the line lost. */
export const about = {
  name: 'Pressure after a line',
  in: { before: role(railPressure, 'p_1', 'Pressure before the line'), loss: linePressureLoss },
  out: role(railPressure, 'p_2', 'Pressure after the line'),
  equation: 'before - loss',
  source: ['definition', 'pressure loss'],
} as const satisfies About

export const pressureDownstream = formula<typeof about>('pressure-downstream', {}, ({ before, loss }) => before - loss)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { linePressureLoss, railPressure } from './quantities.ts'

/** Pressure before a line: what is held at its end and what the line loses on the way. */
export const about = {
  name: 'Pressure before a line',
  in: { after: role(railPressure, 'p_2', 'Pressure after the line'), loss: linePressureLoss },
  out: role(railPressure, 'p_1', 'Pressure before the line'),
  equation: 'after + loss',
  source: ['definition', 'pressure loss'],
} as const satisfies About

export const pressureUpstream = formula<typeof about>('pressure-upstream', {}, ({ after, loss }) => after + loss)

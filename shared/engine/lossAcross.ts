import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure, pressureLoss } from '../boost/quantities.ts'

/** Pressure lost between two places of a stream. */
export const about = {
  name: 'Pressure lost between two places',
  in: { before: role(gasPressure, 'p_v', 'Pressure before'), after: role(gasPressure, 'p_a', 'Pressure after') },
  out: pressureLoss,
  equation: 'before - after',
  source: ['definition', 'difference'],
} as const satisfies About

export const lossAcross = formula<typeof about>('loss-across', {}, ({ before, after }) => before - after)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure, pressureRatio } from './quantities.ts'

/** Pressure after a compressor at a ratio. */
export const about = {
  name: 'Pressure at a ratio',
  in: { inlet: role(gasPressure, 'p_1', 'Compressor inlet pressure'), ratio: pressureRatio },
  out: role(gasPressure, 'p_2', 'Compressor outlet pressure'),
  equation: 'inlet * ratio',
  source: ['definition', 'of pressure ratio'],
} as const satisfies About

export const pressureAtRatio = formula<typeof about>('pressure-at-ratio', {}, ({ inlet, ratio }) => inlet * ratio)

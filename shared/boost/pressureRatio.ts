import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { pressureRatio as ratio } from './quantities.ts'
import { gasPressure } from './quantities.ts'

/** Pressure ratio of a compressor, from absolute pressures at its flanges. */
export const about = {
  name: 'Pressure ratio of the compressor',
  in: { outlet: role(gasPressure, 'p_2', 'Compressor outlet pressure'), inlet: role(gasPressure, 'p_1', 'Compressor inlet pressure') },
  out: ratio,
  equation: 'outlet / inlet',
  source: ['definition', 'absolute pressure out over absolute pressure in; the inlet lies behind filter and duct'],
} as const satisfies About

export const pressureRatio = formula<typeof about>('pressure-ratio', {}, ({ outlet, inlet }) => outlet / inlet)

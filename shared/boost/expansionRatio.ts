import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { expansionRatio as ratio } from './quantities.ts'
import { gasPressure } from './quantities.ts'

/** Expansion ratio of a turbine, from absolute pressures at its flanges. */
export const about = {
  name: 'Expansion ratio of the turbine',
  in: { inlet: role(gasPressure, 'p_3', 'Pressure before the turbine'), outlet: role(gasPressure, 'p_4', 'Pressure after the turbine') },
  out: ratio,
  equation: 'inlet / outlet',
  source: ['definition', 'absolute pressure in over absolute pressure out; the turbine expands to ambient plus what the silencer loses'],
} as const satisfies About

export const expansionRatio = formula<typeof about>('expansion-ratio', {}, ({ inlet, outlet }) => inlet / outlet)

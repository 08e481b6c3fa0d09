import { formula, type About } from '../formula/formula.ts'
import { coilCurrent, coilResistance, coilVoltage } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Current that a coil would end at if it were left on. `U / R`, amperes. */
export const about = {
  name: 'Current a coil ends at',
  in: { voltage: role(coilVoltage, 'U_L', 'Voltage across the coil'), resistance: coilResistance },
  out: role(coilCurrent, 'I_max', 'Current it would end at'),
  equation: 'voltage / resistance',
  source: ['definition', 'Ohm’s law'],
} as const satisfies About

export const coilCurrentLimit = formula<typeof about>('coil-current-limit', {}, ({ voltage, resistance }) => voltage / resistance)

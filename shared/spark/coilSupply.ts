import { formula, type About } from '../formula/formula.ts'
import { coilVoltage, driverDrop } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Voltage that is left across the coil while its driver is on. `U − U_s`, volts. */
export const about = {
  name: 'Voltage across the coil',
  in: { voltage: coilVoltage, driver: driverDrop },
  out: role(coilVoltage, 'U_L', 'Voltage across the coil'),
  equation: 'voltage - driver',
  source: ['definition', 'voltages round a circuit add up'],
} as const satisfies About

export const coilSupply = formula<typeof about>('coil-supply', {}, ({ voltage, driver }) => voltage - driver)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { pumpVoltage, wiringDrop } from './quantities.ts'

/** Voltage left at the pump. */
export const about = {
  name: 'Voltage at the pump',
  in: { supply: role(pumpVoltage, 'U_0', 'System voltage'), drop: wiringDrop },
  out: pumpVoltage,
  equation: 'supply - drop',
  source: ['definition', 'voltage drop'],
} as const satisfies About

export const voltageAfterWiring = formula<typeof about>('voltage-after-wiring', {}, ({ supply, drop }) => supply - drop)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { actuatorPressure, diaphragmArea, rodForce } from './quantities.ts'

/** What a bench pressure becomes on the running engine, where exhaust pressure helps the valve open. */
export const about = {
  name: 'Actuator pressure on the running engine',
  in: { bench: role(actuatorPressure, 'p_b0', 'Bench pressure'), exhaustForce: role(rodForce, 'F_x', 'Exhaust force on the rod'), diaphragmArea },
  out: actuatorPressure,
  equation: 'bench - exhaustForce / diaphragmArea',
  source: ['derived', 'balance of forces on the rod; the bench gives spring over diaphragm area'],
} as const satisfies About

export const pressureUnderExhaust = formula<typeof about>('pressure-under-exhaust', {}, ({ bench, exhaustForce, diaphragmArea: area }) => bench - exhaustForce / area)

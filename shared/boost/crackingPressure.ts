import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { actuatorPressure, diaphragmArea, rodForce, springPreload } from './quantities.ts'

/** Pressure on the actuator at which the wastegate begins to open. */
export const about = {
  name: 'Pressure of first movement',
  in: { preload: springPreload, exhaustForce: role(rodForce, 'F_x', 'Exhaust force on the rod'), diaphragmArea },
  out: role(actuatorPressure, 'p_d0', 'Pressure of first movement'),
  equation: '(preload - exhaustForce) / diaphragmArea',
  source: ['derived', 'balance of forces on the rod, valve shut'],
  notes: 'On the bench the exhaust force is nil. Friction left out.',
} as const satisfies About

export const crackingPressure = formula<typeof about>('cracking-pressure', {}, ({ preload, exhaustForce, diaphragmArea: area }) => (preload - exhaustForce) / area)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { actuatorPressure, diaphragmArea, rodForce, rodTravel, springPreload, springRate } from './quantities.ts'

/** Pressure on the actuator at which the wastegate is fully open. */
export const about = {
  name: 'Pressure of full travel',
  in: { preload: springPreload, rate: springRate, travel: rodTravel, exhaustForce: role(rodForce, 'F_x', 'Exhaust force on the rod'), diaphragmArea },
  out: role(actuatorPressure, 'p_d1', 'Pressure of full travel'),
  equation: '(preload + rate * travel - exhaustForce) / diaphragmArea',
  source: ['derived', 'balance of forces on the rod, valve open'],
  notes: 'The exhaust force on an open valve is taken as that on the shut one: an upper end, since flow past the valve relieves it. Friction left out.',
} as const satisfies About

export const fullOpenPressure = formula<typeof about>('full-open-pressure', {}, ({ preload, rate, travel, exhaustForce, diaphragmArea: area }) => (preload + rate * travel - exhaustForce) / area)

import { rotors } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { leakageFactor } from './quantities.ts'

/** All narrow gaps that the pump feeds: two main bearings, one bearing a rotor, and the pump's own slip. */
export const about = {
  name: 'Leakage factor of the engine',
  in: { main: role(leakageFactor, 'G_m', 'Of a main bearing'), rotor: role(leakageFactor, 'G_r', 'Of a rotor bearing'), slip: role(leakageFactor, 'G_s', 'Of the pump itself'), rotors },
  out: leakageFactor,
  equation: '2 * main + rotors * rotor + slip',
  source: ['derived', 'flows in parallel add'],
} as const satisfies About

export const engineLeakage = formula<typeof about>('engine-leakage', {}, ({ main, rotor, slip, rotors }) => 2 * main + rotors * rotor + slip)

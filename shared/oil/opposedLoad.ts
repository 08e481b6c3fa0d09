import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { rotorLoad } from './quantities.ts'

/** What is left on the rotor bearing when the gas peaks: inertia pulls the other way there. */
export const about = {
  name: 'Load left when the gas peaks',
  in: { gas: role(rotorLoad, 'F_g', 'Gas load'), inertia: role(rotorLoad, 'F_i', 'Inertia load') },
  out: rotorLoad,
  equation: 'abs(gas - inertia)',
  source: ['derived', 'near smallest volume the eccentric points to the chamber: inertia outward, gas inward'],
} as const satisfies About

export const opposedLoad = formula<typeof about>('opposed-load', {}, ({ gas, inertia }) => Math.abs(gas - inertia))

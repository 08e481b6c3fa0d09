import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { bearingSpeed } from './quantities.ts'

/** Turning speed of a rotor, and so of the shell of its bearing. */
export const about = {
  name: 'Rotor speed',
  in: { speed: shaftSpeed },
  out: role(bearingSpeed, 'n_r', 'Rotor speed'),
  equation: 'speed / 3',
  source: ['derived', 'gears of 3 to 2: the rotor turns once for three shaft turns'],
} as const satisfies About

export const rotorTurning = formula<typeof about>('rotor-turning', {}, ({ speed }) => speed / 3)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { rpm } from '../quantity/si.ts'
import { shaftSpeed } from './quantities.ts'

/** A rotor turns once for three turns of the shaft. */
export const about = {
  name: 'Speed of the rotors',
  in: { speed: shaftSpeed },
  out: role({ ...shaftSpeed, range: [rpm(150), rpm(4000)] }, 'n_r', 'Rotor speed'),
  equation: 'speed / 3',
  source: ['yamamoto-1981', 'phasing gears of 3e and 2e pitch radius'],
} as const satisfies About

export const rotorSpeed = formula<typeof about>('rotor-speed', {}, ({ speed }) => speed / 3)

import { eccentricity, rotorMass, shaftSpeed } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { rotorLoad } from './quantities.ts'

/** Centrifugal force of a rotor that its bearing holds. */
export const about = {
  name: 'Inertia load on a rotor bearing',
  in: { mass: rotorMass, eccentricity, speed: shaftSpeed },
  out: rotorLoad,
  equation: 'mass * eccentricity * speed^2',
  source: ['derived', 'the rotor’s centre circles at the eccentricity with shaft speed'],
  notes: 'Mass with seals, springs, bearing and the oil held inside.',
} as const satisfies About

export const rotorInertiaLoad = formula<typeof about>('rotor-inertia-load', {}, ({ mass, eccentricity, speed }) => mass * eccentricity * speed * speed)

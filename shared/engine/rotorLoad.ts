import { formula, type About } from '../formula/formula.ts'
import { eccentricity, rotorLoad as rotorLoadOf, rotorMass, shaftSpeed } from './quantities.ts'

/** Pull of a rotor on its journal: its centre goes round with the shaft. */
export const about = {
  name: 'Centrifugal load of a rotor',
  in: { mass: rotorMass, eccentricity, speed: shaftSpeed },
  out: rotorLoadOf,
  equation: 'mass * eccentricity * speed^2',
  source: ['yamamoto-1981', 'bearing load: inertia of the rotor'],
  notes: 'Source states no range. It turns with the shaft; gas load comes on top, or against it near smallest volume.',
} as const satisfies About

export const rotorLoad = formula<typeof about>('rotor-load', {}, ({ mass, eccentricity: e, speed }) => mass * e * speed ** 2)

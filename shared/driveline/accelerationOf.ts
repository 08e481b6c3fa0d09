import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { equivalentMass, roadAcceleration, roadForce } from './quantities.ts'

/** Acceleration of the car with the smaller of what the engine gives and the tyres take. `(min(F_d, F_t) − F_a − F_r) / m_e`. */
export const about = {
  name: 'Acceleration of the car',
  in: { drive: role(roadForce, 'F_d', 'Force of the driven wheels'), grip: role(roadForce, 'F_t', 'Force at the tyre limit'), drag: role(roadForce, 'F_a', 'Air drag'), resistance: role(roadForce, 'F_r', 'Rolling resistance and gradient'), mass: equivalentMass },
  out: roadAcceleration,
  equation: '(min(drive, grip) - drag - resistance) / mass',
  source: ['gillespie-dynamics', 'chapter 2, power-limited and traction-limited acceleration'],
} as const satisfies About

export const accelerationOf = formula<typeof about>('acceleration-of', {}, ({ drive, grip, drag, resistance, mass }) => (Math.min(drive, grip) - drag - resistance) / mass)

import { formula, type About } from '../formula/formula.ts'
import { boltDiameter, boltPreload, boltTorque, torqueFactor } from './quantities.ts'

/** Torque factor of a bolt whose torque and preload are both known. `M / (F d)`. */
export const about = {
  name: 'Torque factor of a bolt',
  in: { torque: boltTorque, preload: boltPreload, diameter: boltDiameter },
  out: torqueFactor,
  equation: 'torque / (preload * diameter)',
  source: ['shigley-machine-design', 'equation 8-27, turned round'],
} as const satisfies About

export const torqueFactorOf = formula<typeof about>('torque-factor-of', {}, ({ torque, preload, diameter }) => torque / (preload * diameter))

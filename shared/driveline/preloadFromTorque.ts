import { formula, type About } from '../formula/formula.ts'
import { boltDiameter, boltPreload, boltTorque, torqueFactor } from './quantities.ts'

/** Preload that a tightening torque gives. `M / (K d)`, newtons. Most of the torque goes into friction, and K holds all of it. */
export const about = {
  name: 'Preload from torque',
  in: { torque: boltTorque, factor: torqueFactor, diameter: boltDiameter },
  out: boltPreload,
  equation: 'torque / (factor * diameter)',
  source: ['shigley-machine-design', 'equation 8-27'],
  notes: 'Source states no range. K near 0.2 as delivered, 0.18 oiled, 0.3 dry black (Shigley table 8-15).',
} as const satisfies About

export const preloadFromTorque = formula<typeof about>('preload-from-torque', {}, ({ torque, factor, diameter }) => torque / (factor * diameter))

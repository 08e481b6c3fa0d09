import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltCircleRadius, dowelCount, dowelDiameter, heldTorque, shearStrength } from './quantities.ts'

/** Torque at which dowels reach their shear stress. `z π d² τ r / 4`, newton metres. */
export const about = {
  name: 'Torque that dowels hold',
  in: { dowels: dowelCount, diameter: dowelDiameter, stress: shearStrength, radius: role(boltCircleRadius, 'r_p', 'Radius of the dowels') },
  out: role(heldTorque, 'M_p', 'Held by dowels'),
  equation: 'dowels * pi * diameter^2 / 4 * stress * radius',
  source: ['shigley-machine-design', 'section 8-12, shear joints'],
  notes: 'A dowel carries nothing until the faces have slipped by its clearance: the two are compared, never added.',
} as const satisfies About

export const dowelTorqueOf = formula<typeof about>('dowel-torque-of', {}, ({ dowels, diameter, stress, radius }) => ((dowels * Math.PI * diameter ** 2) / 4) * stress * radius)

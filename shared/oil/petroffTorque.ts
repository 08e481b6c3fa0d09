import { formula, type About } from '../formula/formula.ts'
import { bearingLength, bearingSpeed, dynamicViscosity, frictionTorque, journalDiameter, radialClearance } from './quantities.ts'

/** Friction torque of a bearing whose journal runs centred. */
export const about = {
  name: 'Friction of a centred journal',
  in: { viscosity: dynamicViscosity, diameter: journalDiameter, length: bearingLength, clearance: radialClearance, speed: bearingSpeed },
  out: frictionTorque,
  equation: 'pi * viscosity * diameter^3 * length * speed / (4 * clearance)',
  source: ['shigley-bearings', 'Petroff’s equation, T = 4 π² r³ l η N / c'],
  notes: 'No load: a loaded film has more. Source states no range.',
} as const satisfies About

export const petroffTorque = formula<typeof about>('petroff-torque', {}, ({ viscosity, diameter, length, clearance, speed }) =>
  (Math.PI * viscosity * diameter ** 3 * length * speed) / (4 * clearance))

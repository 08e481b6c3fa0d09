import { formula, type About } from '../formula/formula.ts'
import { bearingLoad, frictionCoefficient, frictionTorque, journalDiameter } from './quantities.ts'

/** Coefficient of friction of a bearing from its friction torque. */
export const about = {
  name: 'Coefficient of friction of a bearing',
  in: { torque: frictionTorque, load: bearingLoad, diameter: journalDiameter },
  out: frictionCoefficient,
  equation: '2 * torque / (load * diameter)',
  source: ['definition', 'friction force over load'],
} as const satisfies About

export const petroffFriction = formula<typeof about>('petroff-friction', {}, ({ torque, load, diameter }) => (2 * torque) / (load * diameter))

import { formula, type About } from '../formula/formula.ts'
import { bearingSpeed, frictionPower, frictionTorque } from './quantities.ts'

/** Power that a friction torque turns into heat. */
export const about = {
  name: 'Friction power of a bearing',
  in: { torque: frictionTorque, speed: bearingSpeed },
  out: frictionPower,
  equation: 'torque * speed',
  source: ['definition', 'power is torque times the speed at which the surfaces slide'],
} as const satisfies About

export const frictionPowerOf = formula<typeof about>('friction-power-of', {}, ({ torque, speed }) => torque * speed)

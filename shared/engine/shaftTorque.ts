import { formula, type About } from '../formula/formula.ts'
import { power, shaftSpeed, torque } from './quantities.ts'

/** Torque at the shaft. */
export const about = {
  name: 'Torque from power',
  in: { power, speed: shaftSpeed },
  out: torque,
  equation: 'power / speed',
  source: ['definition', 'power is torque times angular speed'],
} as const satisfies About

export const shaftTorque = formula<typeof about>('shaft-torque', {}, ({ power: brake, speed }) => brake / speed)

import { formula, type About } from '../formula/formula.ts'
import { axleTorque, lockShare, wheelTorque } from './quantities.ts'

/** Torque of the busier half-shaft. `x M_a`, newton metres; half with an open differential, up to all of it with a locked one. */
export const about = {
  name: 'Torque of one half-shaft',
  in: { axle: axleTorque, share: lockShare },
  out: wheelTorque,
  equation: 'axle * share',
  source: ['definition', 'share of the axle’s torque'],
} as const satisfies About

export const halfShaftTorqueFrom = formula<typeof about>('half-shaft-torque-from', {}, ({ axle, share }) => axle * share)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { angularAcceleration, revUpTime } from './quantities.ts'

/** Time from one speed to another at a steady rate. `(ω2 − ω1) / α`, seconds. */
export const about = {
  name: 'Time to rev up',
  in: { from: role(shaftSpeed, 'n_1', 'Speed at the start'), to: role(shaftSpeed, 'n_2', 'Speed at the end'), rate: angularAcceleration },
  out: revUpTime,
  equation: '(to - from) / rate',
  source: ['definition', 'of angular acceleration, held steady'],
} as const satisfies About

export const revUpTimeAt = formula<typeof about>('rev-up-time-at', {}, ({ from, to, rate }) => (to - from) / rate)

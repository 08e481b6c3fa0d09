import { formula, type About } from '../formula/formula.ts'
import { dutyCycle, pulseWidth, turnTime } from './quantities.ts'

/** Pulse as a share of the time there is for it. */
export const about = {
  name: 'Duty of an injector',
  in: { pulse: pulseWidth, turn: turnTime },
  out: dutyCycle,
  equation: 'pulse / turn',
  source: ['definition', 'pulse width over the time of one shaft turn'],
} as const satisfies About

export const dutyOf = formula<typeof about>('duty-of', {}, ({ pulse, turn }) => pulse / turn)

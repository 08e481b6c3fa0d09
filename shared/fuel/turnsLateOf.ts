import { formula, type About } from '../formula/formula.ts'
import { arrivalDelay, turnsLate, turnTime } from './quantities.ts'

/** Charges that a rotor takes before fuel from an injector reaches it. */
export const about = {
  name: 'Charges that fuel comes late',
  in: { delay: arrivalDelay, turn: turnTime },
  out: turnsLate,
  equation: 'delay / turn',
  source: ['derived', 'each rotor takes one charge in a shaft turn'],
} as const satisfies About

export const turnsLateOf = formula<typeof about>('turns-late-of', {}, ({ delay, turn }) => delay / turn)

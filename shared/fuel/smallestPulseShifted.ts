import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { deadTime, smallestPulse } from './quantities.ts'

/** Smallest repeatable pulse at another voltage: what is open time in it stays, what is dead time changes. */
export const about = {
  name: 'Smallest pulse at a voltage',
  in: { smallest: smallestPulse, deadTime: role(deadTime, 't_d1', 'Dead time where the smallest pulse was found'), now: role(deadTime, 't_dU', 'Dead time now') },
  out: role(smallestPulse, 't_minU', 'Smallest repeatable pulse at this voltage'),
  equation: 'smallest + now - deadTime',
  source: ['derived', 'the pulse is dead time and open time; the shortest open time that repeats is taken as the same'],
} as const satisfies About

export const smallestPulseShifted = formula<typeof about>('smallest-pulse-shifted', {}, ({ smallest, deadTime: dead, now }) => smallest + now - dead)

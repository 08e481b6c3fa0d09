import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { echo, pulseShare } from './quantities.ts'

/** What is left of the sudden pulse where the stop takes longer than the echo. */
export const about = {
  name: 'Share of the pulse after a slow stop',
  in: { echo, closing: role(echo, 't_c', 'Time of closing') },
  out: pulseShare,
  equation: 'min(1, echo / closing)',
  source: ['wylie-streeter', 'Michaud: 2 ρ L Δv / t where closing is slower than 2L/a (from memory)'],
  notes: 'Still an upper bound for an even closing: the echo of the open end takes off what it can reach.',
} as const satisfies About

export const slowStopShare = formula<typeof about>('slow-stop-share', {}, ({ echo: back, closing }) => Math.min(1, back / closing))

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { echo, lineLength, waveSpeed } from './quantities.ts'

/** Time in which a pressure wave runs to the end of a line and comes back. */
export const about = {
  name: 'Time of an echo',
  in: { length: lineLength, waveSpeed },
  out: role(echo, 't_e', 'Time of an echo'),
  equation: '2 * length / waveSpeed',
  source: ['wylie-streeter', 'pipe period 2L/a (from memory)'],
} as const satisfies About

export const echoTime = formula<typeof about>('echo-time', {}, ({ length, waveSpeed: speed }) => (2 * length) / speed)

import { formula, type About } from '../formula/formula.ts'
import { dutyLimit, pulseWidth, turnTime } from './quantities.ts'

/** The longest pulse that a limit of duty allows at a speed. */
export const about = {
  name: 'Longest pulse allowed',
  in: { limit: dutyLimit, turn: turnTime },
  out: pulseWidth,
  equation: 'limit * turn',
  source: ['definition', 'duty times the time of one shaft turn'],
} as const satisfies About

export const longestPulseOf = formula<typeof about>('longest-pulse-of', {}, ({ limit, turn }) => limit * turn)

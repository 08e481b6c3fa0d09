import { formula, type About } from '../formula/formula.ts'
import { pulseReserve, pulseWidth, smallestPulse } from './quantities.ts'

/** How much longer a pulse is than the shortest that repeats. */
export const about = {
  name: 'Reserve of a pulse',
  in: { pulse: pulseWidth, smallest: smallestPulse },
  out: pulseReserve,
  equation: 'pulse - smallest',
  source: ['definition', 'pulse less the smallest repeatable one'],
} as const satisfies About

export const pulseReserveOf = formula<typeof about>('pulse-reserve-of', {}, ({ pulse, smallest }) => pulse - smallest)

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { pressurePulse, pulseShare } from './quantities.ts'

/** Pulse that is left after the correction for a slow stop. */
export const about = {
  name: 'Pulse of a stop in its time',
  in: { pulse: pressurePulse, share: pulseShare },
  out: role(pressurePulse, 'Δp_c', 'Pulse with its closing time'),
  equation: 'pulse * share',
  source: ['definition', 'a share of a bound'],
} as const satisfies About

export const pulseLeft = formula<typeof about>('pulse-left', {}, ({ pulse, share }) => pulse * share)

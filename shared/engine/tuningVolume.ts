import { formula, type About } from '../formula/formula.ts'
import { compressionRatio, displacement, resonatorVolume } from './quantities.ts'

/** The chamber, mean over the stroke, on which an intake runner springs. */
export const about = {
  name: 'Effective volume for intake tuning',
  in: { displacement, compressionRatio },
  out: resonatorVolume,
  equation: 'displacement * (compressionRatio + 1) / (2 * (compressionRatio - 1))',
  source: ['engelman-1973', 'effective volume: the chamber at mid-stroke'],
  notes: 'Source: piston engines. Not tested on rotary engines: for screening only.',
} as const satisfies About

export const tuningVolume = formula<typeof about>('tuning-volume', {}, ({ displacement: swept, compressionRatio: ratio }) => (swept * (ratio + 1)) / (2 * (ratio - 1)))

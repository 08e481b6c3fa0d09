import { formula, type About } from '../formula/formula.ts'
import { exducer, inducer, trim } from './quantities.ts'

/** Trim of a compressor wheel: inducer over exducer area, in hundredths. */
export const about = {
  name: 'Trim of a wheel',
  in: { inducer, exducer },
  out: trim,
  equation: '100 * (inducer / exducer)^2',
  source: ['definition', 'as the trade counts it'],
} as const satisfies About

export const wheelTrim = formula<typeof about>('wheel-trim', {}, ({ inducer: d1, exducer: d2 }) => 100 * (d1 / d2) ** 2)

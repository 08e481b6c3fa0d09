import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed, tunedFrequency, tuningFactor } from './quantities.ts'

/** Shaft speed at which a runner of this frequency fills best. */
export const about = {
  name: 'Tuned shaft speed',
  in: { frequency: tunedFrequency, factor: tuningFactor },
  out: shaftSpeed,
  equation: '2 * pi * frequency / factor',
  source: ['engelman-1973', 'tuning factor 2.0 to 2.5, found by experiment'],
  notes: 'Source: piston engines, where an intake event lasts half a turn; that of a rotary lasts three quarters. For screening only.',
} as const satisfies About

export const tunedSpeed = formula<typeof about>('tuned-speed', {}, ({ frequency, factor }) => (2 * Math.PI * frequency) / factor)

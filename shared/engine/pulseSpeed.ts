import { formula, type About } from '../formula/formula.ts'
import { rotors, shaftSpeed, tunedFrequency } from './quantities.ts'

/** Shaft speed at which intake pulses come as often as a volume swings. */
export const about = {
  name: 'Shaft speed of a resonance',
  in: { frequency: tunedFrequency, rotors },
  out: shaftSpeed,
  equation: '2 * pi * frequency / rotors',
  source: ['derived', 'each rotor draws one charge in a shaft turn, evenly spaced'],
} as const satisfies About

export const pulseSpeed = formula<typeof about>('pulse-speed', {}, ({ frequency, rotors: count }) => (2 * Math.PI * frequency) / count)

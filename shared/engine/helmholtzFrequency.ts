import { formula, type About } from '../formula/formula.ts'
import { soundSpeed } from '../media/quantities.ts'
import { ductArea, ductLength, resonatorVolume, tunedFrequency } from './quantities.ts'

/** Frequency of air in a duct that springs on a volume. */
export const about = {
  name: 'Helmholtz frequency',
  in: { soundSpeed, area: ductArea, length: ductLength, volume: resonatorVolume },
  out: tunedFrequency,
  equation: 'soundSpeed / (2 * pi) * sqrt(area / (length * volume))',
  source: ['kinsler', 'chapter 10, Helmholtz resonator'],
  notes: 'Source: duct and volume short against the wavelength; the length includes the end correction.',
} as const satisfies About

export const helmholtzFrequency = formula<typeof about>('helmholtz-frequency', {}, ({ soundSpeed: c, area, length, volume }) => (c / (2 * Math.PI)) * Math.sqrt(area / (length * volume)))

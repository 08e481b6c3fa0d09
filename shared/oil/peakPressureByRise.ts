import { endPressure } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { combustionRise, peakGasPressure } from './quantities.ts'

/** Peak chamber pressure guessed from the pressure at the end of compression. */
export const about = {
  name: 'Peak chamber pressure, estimated',
  in: { compression: endPressure, rise: combustionRise },
  out: peakGasPressure,
  equation: 'compression * rise',
  source: ['common-practice', 'peak about twice the compression pressure; no source'],
  notes: 'An estimate. Ignition timing moves it by a third either way; a chamber pressure sensor replaces it.',
} as const satisfies About

export const peakPressureByRise = formula<typeof about>('peak-pressure-by-rise', {}, ({ compression, rise }) => compression * rise)

import { formula, type About } from '../formula/formula.ts'
import { oilDrop, oilPressure } from './quantities.ts'

/** Pressure that drives oil from the gallery to the sump. */
export const about = {
  name: 'Pressure from gallery to sump',
  in: { pressure: oilPressure },
  out: oilDrop,
  equation: 'pressure',
  source: ['definition', 'gauge pressure against a sump at outside pressure'],
} as const satisfies About

export const dropToSump = formula<typeof about>('drop-to-sump', {}, ({ pressure }) => pressure as number)

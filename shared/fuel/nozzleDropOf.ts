import { formula, type About } from '../formula/formula.ts'
import { airPressure, manifoldPressure } from '../engine/quantities.ts'
import { nozzleDrop, railPressure } from './quantities.ts'

/** Pressure across the nozzle: rail, as a gauge shows it, against the absolute pressure of the manifold. */
export const about = {
  name: 'Pressure across the nozzle',
  in: { rail: railPressure, outside: airPressure, manifold: manifoldPressure },
  out: nozzleDrop,
  equation: 'rail + outside - manifold',
  source: ['definition', 'rail pressure less manifold pressure, both absolute'],
} as const satisfies About

export const nozzleDropOf = formula<typeof about>('nozzle-drop-of', {}, ({ rail, outside, manifold }) => rail + outside - manifold)

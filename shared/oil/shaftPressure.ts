import { shaftSpeed } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { journalDiameter, oilDensity, oilPressure } from './quantities.ts'

/** Pressure that oil must have at the journal's surface to reach the middle of the turning shaft. */
export const about = {
  name: 'Pressure the shaft asks',
  in: { density: oilDensity, speed: shaftSpeed, diameter: journalDiameter },
  out: oilPressure,
  equation: 'density * speed^2 * diameter^2 / 8',
  source: ['derived', 'ρ ω² r² / 2: a column of oil turning with the shaft'],
  notes: 'Radial holes, oil turning fully with the shaft, no loss in the holes.',
} as const satisfies About

export const shaftPressure = formula<typeof about>('shaft-pressure', {}, ({ density, speed, diameter }) => (density * speed * speed * diameter * diameter) / 8)

import { formula, type About } from '../formula/formula.ts'
import { bearingPressure, bearingSpeed, dynamicViscosity, journalDiameter, radialClearance, sommerfeldNumber } from './quantities.ts'

/** Sommerfeld number: how well viscosity and speed carry the load in that clearance. */
export const about = {
  name: 'Sommerfeld number',
  in: { diameter: journalDiameter, clearance: radialClearance, viscosity: dynamicViscosity, speed: bearingSpeed, pressure: bearingPressure },
  out: sommerfeldNumber,
  equation: '(diameter / (2 * clearance))^2 * viscosity * speed / (2 * pi * pressure)',
  source: ['raimondi-boyd', 'S = (r/c)² η N / P, N in turns per second'],
  notes: 'Speed is the one that makes the film, |journal + shell − 2 load|.',
} as const satisfies About

export const sommerfeld = formula<typeof about>('sommerfeld', {}, ({ diameter, clearance, viscosity, speed, pressure }) =>
  ((diameter / (2 * clearance)) ** 2 * viscosity * speed) / (2 * Math.PI * pressure))

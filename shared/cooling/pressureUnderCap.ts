import { formula, type About } from '../formula/formula.ts'
import { airPressure } from '../engine/quantities.ts'
import { capPressureOf, systemPressure } from './quantities.ts'

/** Absolute pressure of the coolant when the cap just holds: altitude takes from it. */
export const about = {
  name: 'Pressure under the cap',
  in: { outside: airPressure, cap: capPressureOf },
  out: systemPressure,
  equation: 'outside + cap',
  source: ['definition', 'gauge and absolute pressure'],
  notes: 'A cold or vented system has less, and the pump’s suction side less again.',
} as const satisfies About

export const pressureUnderCap = formula<typeof about>('pressure-under-cap', {}, ({ outside, cap }) => outside + cap)

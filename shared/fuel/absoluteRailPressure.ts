import { formula, type About } from '../formula/formula.ts'
import { airPressure } from '../engine/quantities.ts'
import { railPressure, vapourPressure } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Absolute pressure in the rail. */
export const about = {
  name: 'Absolute pressure in the rail',
  in: { rail: railPressure, outside: airPressure },
  out: role(vapourPressure, 'p_abs', 'Absolute pressure in the rail'),
  equation: 'rail + outside',
  source: ['definition', 'a gauge reads against outside air'],
} as const satisfies About

export const absoluteRailPressure = formula<typeof about>('absolute-rail-pressure', {}, ({ rail, outside }) => rail + outside)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { isoGrade, viscosityAt40 } from './quantities.ts'

/** Least and most viscosity at 40 °C of an industrial viscosity grade. */
export const about = {
  name: 'Limits of an ISO viscosity grade',
  in: { grade: isoGrade },
  out: { least: role(viscosityAt40, 'ν_min', 'Least viscosity at 40 °C'), most: role(viscosityAt40, 'ν_max', 'Most viscosity at 40 °C') },
  equation: { least: '0.9 * grade', most: '1.1 * grade' },
  source: ['iso-3448', 'a tenth either side of the midpoint'],
} as const satisfies About

export const isoLimits = formula<typeof about>('iso-limits', { grade: [2.2e-6, 3200e-6] }, ({ grade }) => ({ least: 0.9 * grade, most: 1.1 * grade }))

import { formula, type About } from '../formula/formula.ts'
import { heatRatio, throatPressureRatio } from './quantities.ts'

/** Pressure in the throat over pressure before, at which a gas reaches the speed of sound there. */
export const about = {
  name: 'Critical pressure ratio',
  in: { heatRatio },
  out: throatPressureRatio,
  equation: '(2 / (heatRatio + 1))^(heatRatio / (heatRatio - 1))',
  source: ['dixon-turbomachinery', 'one-dimensional isentropic flow'],
  notes: 'Source states no range. Ideal gas, no friction.',
} as const satisfies About

export const criticalPressureRatio = formula<typeof about>('critical-pressure-ratio', {}, ({ heatRatio: gamma }) => (2 / (gamma + 1)) ** (gamma / (gamma - 1)))

import { formula, type About } from '../formula/formula.ts'
import { fittingLoss, fuelDensity, linePressureLoss, lineSpeed } from './quantities.ts'

/** Pressure lost in bends, filters, entries and exits. */
export const about = {
  name: 'Pressure lost in fittings',
  in: { coefficient: fittingLoss, density: fuelDensity, speed: lineSpeed },
  out: linePressureLoss,
  equation: 'coefficient * density * speed^2 / 2',
  source: ['white-fluid', 'section 6.9, minor losses'],
  notes: 'Source states no range. Coefficients of fittings close together do not simply add.',
} as const satisfies About

export const fittingLossOf = formula<typeof about>('fitting-loss-of', {}, ({ coefficient, density, speed }) => (coefficient * density * speed ** 2) / 2)

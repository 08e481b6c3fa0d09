import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dischargeCoefficient, dynamicViscosity, leakageFactor, oilDensity, oilFlow, oilPressure, openArea } from './quantities.ts'

/** Pressure at which all gaps and holes together take what the pump gives, before any relief valve opens. */
export const about = {
  name: 'Oil pressure without relief',
  in: { ideal: role(oilFlow, 'Q_i', 'Pump flow without slip'), leakage: leakageFactor, viscosity: dynamicViscosity, area: openArea, coefficient: dischargeCoefficient, density: oilDensity },
  out: oilPressure,
  holds: 'ideal = out * leakage / viscosity + coefficient * area * sqrt(2 * out / density)',
  sample: { leakage: [1e-14, 2e-12], area: [1e-6, 100e-6], ideal: [1e-5, 2e-3] },
  source: ['derived', 'flow of the pump equals flow through gaps and holes: a quadratic in the root of the pressure'],
} as const satisfies About

export const balancedPressure = formula<typeof about>('balanced-pressure', {}, ({ ideal, leakage, viscosity, area, coefficient, density }) => {
  const a = leakage / viscosity
  const b = coefficient * area * Math.sqrt(2 / density)
  // Written so that it also holds without gaps (a = 0) and loses no figures when a is small.
  const root = (2 * ideal) / (b + Math.sqrt(b * b + 4 * a * ideal))
  return root * root
})

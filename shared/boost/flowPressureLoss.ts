import { formula, type About } from '../formula/formula.ts'
import { gasDensity, gasFlow, lossCoefficient, pressureLoss } from './quantities.ts'

/** Pressure lost by a gas in a filter, duct, cooler or silencer: at equal mass flow, twice the density loses half. */
export const about = {
  name: 'Pressure loss of a passage',
  in: { coefficient: lossCoefficient, flow: gasFlow, density: gasDensity },
  out: pressureLoss,
  equation: 'coefficient * flow^2 / density',
  source: ['derived', 'loss proportional to dynamic pressure, ζ ρ v²/2 with v = m/(ρ A), all that belongs to the passage gathered in K = ζ/(2 A²)'],
  notes: 'Source states no range. Turbulent flow; density is taken as that at the entry and the loss as small beside the pressure.',
} as const satisfies About

export const flowPressureLoss = formula<typeof about>('flow-pressure-loss', {}, ({ coefficient, flow, density }) => (coefficient * flow * flow) / density)

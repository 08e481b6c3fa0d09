import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDensity, volumeGrowth } from './quantities.ts'

/** How much more room an oil takes than at 15 °C. */
export const about = {
  name: 'Growth of oil by warming',
  in: { density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), density: oilDensity },
  out: volumeGrowth,
  equation: 'density15 / density - 1',
  source: ['derived', 'the mass stays'],
} as const satisfies About

export const volumeGrowthOf = formula<typeof about>('volume-growth-of', {}, ({ density15, density }) => density15 / density - 1)

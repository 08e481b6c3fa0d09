import { type About, formula } from '../formula/formula.ts'
import { oilDensity, sumpMass, sumpOil } from './quantities.ts'

/** Mass of a volume of oil. */
export const about = {
  name: 'Mass of the oil',
  in: { volume: sumpOil, density: oilDensity },
  out: sumpMass,
  equation: 'volume * density',
  source: ['definition', 'volume times density'],
} as const satisfies About

export const massOfOil = formula<typeof about>('mass-of-oil', {}, ({ volume, density }) => volume * density)

import { type About, formula } from '../formula/formula.ts'
import { fuelDensity, fuelMassShare, premixOilDensity, premixShare } from './quantities.ts'

/** Share of oil in the mass of fuel and oil together. */
export const about = {
  name: 'Oil share by mass',
  in: { share: premixShare, oilDensity: premixOilDensity, fuelDensity },
  out: fuelMassShare,
  equation: 'share * oilDensity / (share * oilDensity + fuelDensity)',
  source: ['definition', 'a share by volume turned into mass'],
} as const satisfies About

export const oilMassShareOf = formula<typeof about>('oil-mass-share-of', {}, ({ share, oilDensity, fuelDensity: density }) => (share * oilDensity) / (share * oilDensity + density))

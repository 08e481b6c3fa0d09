import { formula, type About } from '../formula/formula.ts'
import { coolantDensityOf, coolantHeatCapacity as specificHeatOf, coolantVolumeOf, storedPerKelvin } from './quantities.ts'

/** Heat that all the coolant stores for each kelvin. */
export const about = {
  name: 'Heat capacity of the coolant',
  in: { volume: coolantVolumeOf, density: coolantDensityOf, specificHeat: specificHeatOf },
  out: storedPerKelvin,
  equation: 'volume * density * specificHeat',
  source: ['definition', 'of specific heat'],
} as const satisfies About

export const coolantHeatCapacity = formula<typeof about>('coolant-heat-capacity', {}, ({ volume, density, specificHeat }) => volume * density * specificHeat)

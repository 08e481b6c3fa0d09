import { formula, type About } from '../formula/formula.ts'
import { stefanBoltzmann } from '../formula/constants.ts'
import { airTemperature } from '../engine/quantities.ts'
import { emissivityOf, heatFlow, surfaceArea, surfaceTemperatureOf } from './quantities.ts'

/** Heat that a surface radiates to its surroundings. */
export const about = {
  name: 'Heat radiated',
  in: { surface: surfaceTemperatureOf, around: airTemperature, area: surfaceArea, emissivity: emissivityOf },
  out: heatFlow,
  equation: 'emissivity * stefanBoltzmann * area * (surface^4 - around^4)',
  constants: { stefanBoltzmann },
  source: ['incropera', 'equation 1.7, small grey surface in large surroundings'],
  sample: { surface: [400, 1300] },
} as const satisfies About

export const radiatedHeat = formula<typeof about>('radiated-heat', {}, ({ surface, around, area, emissivity }) => emissivity * stefanBoltzmann.value * area * (surface ** 4 - around ** 4))

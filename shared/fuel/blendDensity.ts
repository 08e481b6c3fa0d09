import { formula, type About } from '../formula/formula.ts'
import { densityOfBlend } from './densityOfBlend.ts'
import { ethanolDensityAt } from './ethanolDensityAt.ts'
import { petrolDensityAt } from './petrolDensityAt.ts'
import { ethanolShare, fuelDensity, fuelTemperature } from './quantities.ts'

/** Density of petrol with a share of ethanol at a temperature. */
export const about = {
  name: 'Density of petrol and ethanol',
  in: { ethanolShare, petrolDensity: fuelDensity, temperature: fuelTemperature },
  out: fuelDensity,
  steps: ['Petrol and ethanol are each brought to the temperature.', 'Their densities are weighed by volume.'],
  source: ['api-mpms-11-1', 'table 54B for the petrol'],
  notes: 'The share by volume is taken as the same at every temperature: both swell nearly alike.',
} as const satisfies About

export const blendDensity = formula<typeof about>('blend-density', {}, ({ ethanolShare: share, petrolDensity, temperature }) =>
  densityOfBlend({ volumeShare: share, density: ethanolDensityAt({ temperature }), otherDensity: petrolDensityAt({ density15: petrolDensity, temperature }) }))

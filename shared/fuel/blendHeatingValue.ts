import { formula, type About } from '../formula/formula.ts'
import { ethanolHeatingValue, volumeBase } from './atoms.ts'
import { ethanolDensityAt } from './ethanolDensityAt.ts'
import { fuelMassShareOf } from './fuelMassShareOf.ts'
import { heatOfBlend } from './heatOfBlend.ts'
import { ethanolShare, fuelDensity, heatingValue } from './quantities.ts'

/** Lower heating value of petrol with a share of ethanol. */
export const about = {
  name: 'Heating value of petrol and ethanol',
  in: { ethanolShare, petrolDensity: fuelDensity, petrolHeat: heatingValue },
  out: heatingValue,
  steps: ['The ethanol share by mass follows from the share by volume and both densities at 15 °C.', 'Heat of petrol and of ethanol are weighed by mass.'],
  source: ['afdc-fuels', 'lower heating value of ethanol, 11,585 Btu/lb'],
} as const satisfies About

export const blendHeatingValue = formula<typeof about>('blend-heating-value', {}, ({ ethanolShare: share, petrolDensity, petrolHeat }) => {
  const massShare = fuelMassShareOf({ volumeShare: share, density: ethanolDensityAt({ temperature: volumeBase.value }), otherDensity: petrolDensity })
  return heatOfBlend({ massShare, heat: ethanolHeatingValue.value, otherHeat: petrolHeat })
})

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { volumeBase } from './atoms.ts'
import { blendDensity } from './blendDensity.ts'
import { blendHeatingValue } from './blendHeatingValue.ts'
import { heatOfBlend } from './heatOfBlend.ts'
import { oilMassShareOf } from './oilMassShareOf.ts'
import { ethanolShare, fuelDensity, heatingValue, premixOilDensity, premixShare } from './quantities.ts'

/** Heating value of the fuel with the oil that is premixed in it. */
export const about = {
  name: 'Heating value of what is burned',
  in: {
    ethanolShare, petrolDensity: role(fuelDensity, 'ρ_15', 'Density of the petrol at 15 °C'), petrolHeat: role(heatingValue, 'H_p', 'Heating value of the petrol'),
    oilShare: premixShare, oilDensity: premixOilDensity, oilHeat: role(heatingValue, 'H_o', 'Heating value of the oil'),
  },
  out: heatingValue,
  steps: ['The heating value of the blend of petrol and ethanol.', 'Where oil is premixed, both are weighed by mass, at the densities of 15 °C.'],
  source: ['derived', 'oil that rides along burns too'],
} as const satisfies About

export const burnedHeat = formula<typeof about>('burned-heat', {}, ({ ethanolShare: share, petrolDensity, petrolHeat, oilShare, oilDensity, oilHeat }) => {
  const heat = blendHeatingValue({ ethanolShare: share, petrolDensity, petrolHeat })
  if (!(oilShare > 0)) return heat
  const massShare = oilMassShareOf({ share: oilShare, oilDensity, fuelDensity: blendDensity({ ethanolShare: share, petrolDensity, temperature: volumeBase.value }) })
  return heatOfBlend({ massShare, heat: oilHeat, otherHeat: heat })
})

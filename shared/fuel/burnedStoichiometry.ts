import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { volumeBase } from './atoms.ts'
import { blendDensity } from './blendDensity.ts'
import { blendStoichiometry } from './blendStoichiometry.ts'
import { premixStoichiometry } from './premixStoichiometry.ts'
import { ethanolShare, fuelDensity, hydrogenToCarbon, premixOilDensity, premixShare, stoichiometricRatio } from './quantities.ts'

/** Air that the fuel burns with the oil that is premixed in it. */
export const about = {
  name: 'Stoichiometric ratio of what is burned',
  in: { ethanolShare, petrolDensity: role(fuelDensity, 'ρ_15', 'Density of the petrol at 15 °C'), petrolHydrogen: role(hydrogenToCarbon, 'y_p', 'Hydrogen atoms per carbon atom of the petrol'), oilShare: premixShare, oilDensity: premixOilDensity },
  out: stoichiometricRatio,
  steps: ['The ratio of the blend of petrol and ethanol.', 'Where oil is premixed, both are weighed by mass, at the densities of 15 °C.'],
  source: ['derived', 'oil that rides along burns too'],
} as const satisfies About

export const burnedStoichiometry = formula<typeof about>('burned-stoichiometry', {}, ({ ethanolShare: share, petrolDensity, petrolHydrogen, oilShare, oilDensity }) => {
  const ratio = blendStoichiometry({ ethanolShare: share, petrolDensity, petrolHydrogen })
  return oilShare > 0 ? premixStoichiometry({ share: oilShare, oilDensity, fuelDensity: blendDensity({ ethanolShare: share, petrolDensity, temperature: volumeBase.value }), ratio }) : ratio
})

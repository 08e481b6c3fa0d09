import { formula, type About } from '../formula/formula.ts'
import { ethanolHydrogenToCarbon, ethanolOxygenToCarbon, volumeBase } from './atoms.ts'
import { ethanolDensityAt } from './ethanolDensityAt.ts'
import { fuelMassShareOf } from './fuelMassShareOf.ts'
import { ethanolShare, fuelDensity, hydrogenToCarbon, stoichiometricRatio } from './quantities.ts'
import { ratioOfBlend } from './ratioOfBlend.ts'
import { stoichiometricRatioOf } from './stoichiometricRatioOf.ts'

/** Stoichiometric ratio of petrol with a share of ethanol. */
export const about = {
  name: 'Stoichiometric ratio of petrol and ethanol',
  in: { ethanolShare, petrolDensity: fuelDensity, petrolHydrogen: hydrogenToCarbon },
  out: stoichiometricRatio,
  steps: ['The ethanol share by mass follows from the share by volume and both densities at 15 °C.', 'Each part has the ratio of its own composition.', 'The two are weighed by mass.'],
  source: ['derived', 'from the composition of petrol and of ethanol, C2H6O'],
} as const satisfies About

export const blendStoichiometry = formula<typeof about>('blend-stoichiometry', {}, ({ ethanolShare: share, petrolDensity, petrolHydrogen }) => {
  const massShare = fuelMassShareOf({ volumeShare: share, density: ethanolDensityAt({ temperature: volumeBase.value }), otherDensity: petrolDensity })
  const ratio = stoichiometricRatioOf({ hydrogen: ethanolHydrogenToCarbon.value, oxygen: ethanolOxygenToCarbon.value })
  return ratioOfBlend({ massShare, ratio, otherRatio: stoichiometricRatioOf({ hydrogen: petrolHydrogen, oxygen: 0 }) })
})

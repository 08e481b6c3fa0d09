import { formula, type About } from '../formula/formula.ts'
import { oilHydrogenToCarbon } from './atoms.ts'
import { fuelMassShareOf } from './fuelMassShareOf.ts'
import { fuelDensity, premixOilDensity, premixShare, stoichiometricRatio } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { ratioOfBlend } from './ratioOfBlend.ts'
import { stoichiometricRatioOf } from './stoichiometricRatioOf.ts'

/** Stoichiometric ratio of fuel with its premixed oil, which burns too. */
export const about = {
  name: 'Stoichiometric ratio with premix',
  in: { share: premixShare, oilDensity: premixOilDensity, fuelDensity, ratio: role(stoichiometricRatio, 'L_0', 'Ratio of the fuel alone') },
  out: role(stoichiometricRatio, 'L_p', 'Ratio with the oil'),
  steps: ['The oil’s share of fuel and oil together is brought from volume to mass.', 'The oil is taken as a hydrocarbon with 1.9 hydrogen atoms per carbon atom.', 'Both ratios are weighed by mass.'],
  source: ['common-practice', 'composition of lubricating oil near CH1.9'],
} as const satisfies About

export const premixStoichiometry = formula<typeof about>('premix-stoichiometry', {}, ({ share, oilDensity, fuelDensity: density, ratio }) => {
  const massShare = fuelMassShareOf({ volumeShare: share / (1 + share), density: oilDensity, otherDensity: density })
  return ratioOfBlend({ massShare, ratio: stoichiometricRatioOf({ hydrogen: oilHydrogenToCarbon.value, oxygen: 0 }), otherRatio: ratio })
})

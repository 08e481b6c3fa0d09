import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelMassShare, premixOilDensity, premixShare, fuelDensity, stoichiometricRatio } from './quantities.ts'

/** How much richer the mixture becomes when oil rides along and the injected volume stays the same; negative is richer. */
export const about = {
  name: 'Shift of lambda by premix',
  in: {
    share: premixShare, oilDensity: premixOilDensity, fuelDensity, ratio: role(stoichiometricRatio, 'L_0', 'Ratio of the fuel alone'), mixedRatio: role(stoichiometricRatio, 'L_p', 'Ratio with the oil'),
  },
  out: role(fuelMassShare, 'Δλ', 'Shift of lambda'),
  equation: 'ratio * fuelDensity * (1 + share) / (mixedRatio * (fuelDensity + share * oilDensity)) - 1',
  source: ['derived', 'same volume injected, its mass and its need of air changed by the oil'],
} as const satisfies About

export const premixLambdaShift = formula<typeof about>('premix-lambda-shift', {}, ({ share, oilDensity, fuelDensity: density, ratio, mixedRatio }) => (ratio * density * (1 + share)) / (mixedRatio * (density + share * oilDensity)) - 1)

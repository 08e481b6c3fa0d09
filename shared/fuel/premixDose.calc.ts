import { calculation, free } from '../calculation/calculation.ts'
import { litre } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { blendStoichiometry } from './blendStoichiometry.ts'
import { fuelEthanol, petrolDensity, petrolHydrogen, premix, premixDensity } from './fields.ts'
import { at } from './point.ts'
import { premixDoseFor } from './premixDoseFor.ts'
import { premixLambdaShift } from './premixLambdaShift.ts'
import { premixRatioOf } from './premixRatioOf.ts'
import { premixStoichiometry } from './premixStoichiometry.ts'
import { fuelMassShare, oilDose, premixRatio, premixShare, tankVolume } from './quantities.ts'

export default calculation({
  id: 'premix-dose',
  title: 'Premix dose',
  theme: 'oil',
  asks: 'How much oil do I pour in with this fill, also when the tank is part full?',
  article: 'premix-arithmetic-and-dosing',
  cautions: ['fuel-additives-skin', 'fuel-vapour', 'emission-law', 'model-only'],
  in: {
    wanted: premix, added: free(tankVolume, litre(40), 'Fuel filled in'), present: free(tankVolume, litre(15), 'Fuel already in the tank'), presentShare: free(premixShare, 0.005, 'Oil share of the fuel already there'),
    oilDensity: premixDensity, density: at.density, ethanolShare: fuelEthanol, petrolDensity, petrolHydrogen,
  },
  out: { dose: oilDose, ratio: premixRatio, shift: role(fuelMassShare, 'Δλ', 'Shift of lambda by the oil') },
  curve: ['wanted', 'dose'],
  mayLack: ['ratio'],
  answer({ wanted, added, present, presentShare, oilDensity, density, ethanolShare, petrolDensity: density15, petrolHydrogen: hydrogen }) {
    const ratio = blendStoichiometry({ ethanolShare, petrolDensity: density15, petrolHydrogen: hydrogen })
    const mixedRatio = premixStoichiometry({ share: wanted, oilDensity, fuelDensity: density, ratio })
    return {
      dose: premixDoseFor({ wanted, added, present, presentShare }),
      ratio: premixRatioOf({ share: wanted }),
      shift: premixLambdaShift({ share: wanted, oilDensity, fuelDensity: density, ratio, mixedRatio }),
    }
  },
  says: ({ dose, shift }) => dose < 0
    ? 'The tank already holds more oil than this fill needs: pour none. Wanted was {wanted}, {ratio} to 1.'
    : `Pour in {dose} with {added} of fuel: the tank then holds {wanted} oil, {ratio} to 1. At the same pulses lambda moves by {shift}${Math.abs(shift) < 0.005 ? ', less than a sensor tells apart' : ', which the fuel map has to make up for'}.`,
  leavesOut: 'Oil that stays on the can, and whether the seals get enough of it.',
})

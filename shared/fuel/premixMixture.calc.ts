import { calculation } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { lambda } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { blendHeatingValue } from './blendHeatingValue.ts'
import { blendStoichiometry } from './blendStoichiometry.ts'
import { changeOf } from './changeOf.ts'
import { fuelEthanol, petrolDensity, petrolHeatingValue, petrolHydrogen, premix, premixDensity, premixHeat } from './fields.ts'
import { heatOfBlend } from './heatOfBlend.ts'
import { oilMassShareOf } from './oilMassShareOf.ts'
import { at } from './point.ts'
import { premixLambdaShift } from './premixLambdaShift.ts'
import { premixStoichiometry } from './premixStoichiometry.ts'
import { fuelChange, heatingValue, stoichiometricRatio } from './quantities.ts'
import { shiftedLambda } from './shiftedLambda.ts'

export default calculation({
  id: 'premix-mixture',
  title: 'What premix does to mixture and energy',
  theme: 'oil',
  asks: 'How much do stoichiometry, heating value and lambda move because oil rides along in the fuel?',
  article: 'premix-arithmetic-and-dosing',
  cautions: ['fuel-additives-skin', 'emission-law', 'model-only'],
  in: {
    share: premix, oilDensity: premixDensity, density: at.density, ethanolShare: fuelEthanol, petrolDensity, petrolHydrogen, petrolHeat: petrolHeatingValue, oilHeat: premixHeat, lambda: engine.lambda,
  },
  out: {
    plain: role(stoichiometricRatio, 'L_0', 'Ratio of the fuel alone'), mixed: role(stoichiometricRatio, 'L_p', 'Ratio with the oil'), heat: role(heatingValue, 'H_p', 'Heating value with the oil'),
    heatChange: role(fuelChange, 'δ_H', 'Change of the heating value'), shift: role(fuelChange, 'Δλ', 'Shift of lambda at the same pulses'), then: role(lambda, 'λ_p', 'Lambda at the same pulses'),
  },
  curve: ['share', 'shift'],
  answer({ share, oilDensity, density, ethanolShare: ethanol, petrolDensity: density15, petrolHydrogen: hydrogen, petrolHeat, oilHeat, lambda }) {
    const plain = blendStoichiometry({ ethanolShare: ethanol, petrolDensity: density15, petrolHydrogen: hydrogen })
    const mixed = premixStoichiometry({ share, oilDensity, fuelDensity: density, ratio: plain })
    const alone = blendHeatingValue({ ethanolShare: ethanol, petrolDensity: density15, petrolHeat })
    const heat = heatOfBlend({ massShare: oilMassShareOf({ share, oilDensity, fuelDensity: density }), heat: oilHeat, otherHeat: alone })
    const shift = premixLambdaShift({ share, oilDensity, fuelDensity: density, ratio: plain, mixedRatio: mixed })
    return { plain, mixed, heat, heatChange: changeOf({ now: heat, before: alone }), shift, then: shiftedLambda({ lambda, shift }) }
  },
  says: ({ shift }) => `With {share} of oil the ratio goes from {plain} to {mixed} and the heating value changes by {heatChange}. At the same pulses lambda moves by {shift}, to {then}${Math.abs(shift) < 0.005 ? ': less than a sensor tells apart' : ': the fuel map has to make up for it'}.`,
  leavesOut: 'Oil is thicker than fuel and lifts the viscosity a little, which moves injector flow less than its own scatter. Octane and deposits are another matter: no published figure fits all oils.',
})

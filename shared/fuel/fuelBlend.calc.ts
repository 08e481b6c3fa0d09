import { calculation } from '../calculation/calculation.ts'
import { blendDensity } from './blendDensity.ts'
import { blendHeatingValue } from './blendHeatingValue.ts'
import { blendStoichiometry } from './blendStoichiometry.ts'
import { fuelEthanol, petrolDensity, petrolHeatingValue, petrolHydrogen, runningTemperature } from './fields.ts'
import { fuelVolumeFlowOf } from './fuelVolumeFlowOf.ts'
import { at } from './point.ts'
import { heatingValue, stoichiometricRatio } from './quantities.ts'

export default calculation({
  id: 'fuel-blend',
  title: 'Fuel composition',
  theme: 'fuel',
  asks: 'What does a share of ethanol change in air, heat and flow?',
  article: 'fuel-composition',
  cautions: ['fuel-vapour', 'fuel-additives-skin', 'model-only'],
  in: { ethanolShare: fuelEthanol, petrolDensity, petrolHydrogen, petrolHeat: petrolHeatingValue, temperature: runningTemperature, massFlow: at.fuelMassFlow },
  out: { ratio: stoichiometricRatio, heat: heatingValue, density: at.density, volumeFlow: at.volumeFlow },
  curve: ['ethanolShare', 'ratio'],
  answer({ ethanolShare, petrolDensity: density15, petrolHydrogen: hydrogen, petrolHeat, temperature, massFlow }) {
    const density = blendDensity({ ethanolShare, petrolDensity: density15, temperature })
    return {
      ratio: blendStoichiometry({ ethanolShare, petrolDensity: density15, petrolHydrogen: hydrogen }),
      heat: blendHeatingValue({ ethanolShare, petrolDensity: density15, petrolHeat }),
      density,
      volumeFlow: fuelVolumeFlowOf({ massFlow, density }),
    }
  },
  says: () => 'With {ethanolShare} ethanol, one part of fuel burns {ratio} parts of air and gives {heat}. At {temperature} the engine drinks {volumeFlow} of it. A sensor that reads lambda sees no difference; injectors and pump do.',
  leavesOut: 'The swelling of the blend on mixing, other alcohols and ethers, and the cooling by evaporation.',
})

import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { compressorMapOf, coolerLoss, inletLoss } from '../boost/fields.ts'
import { correctedFlow } from '../boost/correctedFlow.ts'
import { flowPressureLoss } from '../boost/flowPressureLoss.ts'
import { gaugeBoost } from '../boost/gaugeBoost.ts'
import { pressureAfterLoss } from '../boost/pressureAfterLoss.ts'
import { pressureBeforeLoss } from '../boost/pressureBeforeLoss.ts'
import { pressureRatio } from '../boost/pressureRatio.ts'
import { correctedFlow as correctedFlowOf, pressureRatio as ratioOf } from '../boost/quantities.ts'
import { turbosFitted } from '../boost/fields.ts'
import { flowOfOne } from '../boost/flowOfOne.ts'
import { burnedStoichiometry } from '../fuel/burnedStoichiometry.ts'
import { fuelEthanol, petrolDensity, petrolHydrogen, premix, premixDensity } from '../fuel/fields.ts'
import { oilShareBurned } from '../fuel/oilShareBurned.ts'
import { sealsBy } from '../oil/fields.ts'
import { fuelFlow } from '../fuel/quantities.ts'
import { saturationPressure } from '../media/saturationPressure.ts'
import { vapourPressure } from '../media/vapourPressure.ts'
import { vapourShare } from '../media/vapourShare.ts'
import { gPerKWh, kW } from '../quantity/si.ts'
import { airForFuel } from './airForFuel.ts'
import { densityForAir } from './densityForAir.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { dryAirPressure } from './dryAirPressure.ts'
import {
  engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineRotors, engineShift, engineWidth, siteAirPressure, siteAirTemperature, siteHumidity,
} from './fields.ts'
import { fuelForPower } from './fuelForPower.ts'
import { gasDensity } from './gasDensity.ts'
import { manifoldForDensity } from './manifoldForDensity.ts'
import { at } from './point.ts'
import { airFlow, boostPressure, manifoldPressure, power, specificConsumption } from './quantities.ts'

export default calculation({
  id: 'air-for-power', title: 'Air, fuel and pressure ratio for a power', theme: 'engine', article: 'placing-the-engine-on-a-compressor-map', cautions: ['emission-law', 'knock', 'model-only'],
  asks: 'What air, fuel and boost does this power take, and where does that lie on a compressor map?',
  in: {
    power: free(power, kW(300), 'Power wanted'), consumption: free(specificConsumption, gPerKWh(360)), lambda: at.lambda, speed: at.speed, ve: at.ve, charge: at.charge,
    airPressure: siteAirPressure, airTemperature: siteAirTemperature, humidity: siteHumidity, inletCoefficient: inletLoss, coolerCoefficient: coolerLoss, map: compressorMapOf, turbos: turbosFitted,
    ethanolShare: fuelEthanol, density: petrolDensity, hydrogen: petrolHydrogen, oiling: sealsBy, premixed: premix, oilDensity: premixDensity, rotors: engineRotors,
    describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, stated: engineDisplacement,
  },
  out: { air: airFlow, fuel: fuelFlow, boost: boostPressure, ratio: ratioOf, corrected: correctedFlowOf, manifold: manifoldPressure },
  curve: ['power', 'ratio'],
  answer({ power, consumption, lambda, speed, ve, charge, airPressure, airTemperature, humidity, inletCoefficient, coolerCoefficient, map, turbos, ethanolShare, density, hydrogen, oiling, premixed, oilDensity, rotors, ...description }) {
    const fuel = fuelForPower({ power, consumption })
    const stoichiometricRatio = burnedStoichiometry({ ethanolShare, petrolDensity: density, petrolHydrogen: hydrogen, oilShare: oilShareBurned({ by: oiling, share: premixed }), oilDensity })
    const air = airForFuel({ fuelFlow: fuel, stoichiometricRatio, lambda })
    const share = vapourShare({ vapourPressure: vapourPressure({ humidity, saturation: saturationPressure({ temperature: airTemperature }) }), pressure: airPressure })
    const inManifold = densityForAir({ airFlow: air, volumetricEfficiency: ve, displacement: describedDisplacement(description), rotors, speed })
    const manifold = manifoldForDensity({ density: inManifold, temperature: charge, share })
    const outside = gasDensity({ pressure: dryAirPressure({ pressure: airPressure, share }), temperature: airTemperature })
    const inlet = pressureAfterLoss({ before: airPressure, loss: flowPressureLoss({ coefficient: inletCoefficient, flow: air, density: outside }) })
    if (!(inlet > 0)) throw new NoAnswer('air-for-power', 'Filter and inlet duct would take all the pressure there is at this flow: no compressor draws that air through them.')
    const outlet = pressureBeforeLoss({ after: manifold, loss: flowPressureLoss({ coefficient: coolerCoefficient, flow: air, density: inManifold }) })
    const { referenceTemperature, referencePressure } = map
    return {
      air, fuel, boost: gaugeBoost({ manifold, outside: airPressure }), ratio: pressureRatio({ outlet, inlet }),
      corrected: correctedFlow({ flow: flowOfOne({ flow: air, turbos }), temperature: airTemperature, pressure: inlet, referenceTemperature, referencePressure }), manifold,
    }
  },
  says: ({ boost }) => boost > 0
    ? '{power} at {consumption} burns {fuel} in {air} of dry air. At {speed} that takes {boost}; the compressor works at a ratio of {ratio} and {corrected} as its map counts it. Look for that point on the map before you buy.'
    : '{power} at {consumption} burns {fuel} in {air} of dry air: at {speed} the engine takes that in without boost.',
  leavesOut: 'Knock, whether the turbine can drive it, and how consumption changes with boost: it is a number you put in.',
})

import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at as boost } from '../boost/point.ts'
import { burnedHeat } from '../fuel/burnedHeat.ts'
import { burnedStoichiometry } from '../fuel/burnedStoichiometry.ts'
import { oilShareBurned } from '../fuel/oilShareBurned.ts'
import { sealsBy } from '../oil/fields.ts'
import { fuelEthanol, petrolDensity, petrolHeatingValue, petrolHydrogen, premix, premixDensity, premixHeat } from '../fuel/fields.ts'
import { fuelFlow } from '../fuel/quantities.ts'
import { brakePower } from './brakePower.ts'
import { coldAirEfficiency } from './coldAirEfficiency.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import {
  engineCompressionRatio, engineDescribedBy, engineDisplacement, engineEccentricity, engineFrictionConstant, engineFrictionSlope, engineGeneratingRadius, engineQuality, engineRotors,
  engineShift, engineWidth,
} from './fields.ts'
import { frictionMeanPressure } from './frictionMeanPressure.ts'
import { fuelFlowForAir } from './fuelFlowForAir.ts'
import { fuelPower } from './fuelPower.ts'
import { indicatedPower } from './indicatedPower.ts'
import { meanEffectivePressure } from './meanEffectivePressure.ts'
import { meanPressurePower } from './meanPressurePower.ts'
import { at } from './point.ts'
import { pumpingMeanPressure } from './pumpingMeanPressure.ts'
import { meanPressure as meanPressureOf, power, specificConsumption, torque } from './quantities.ts'
import { releasedShare } from './releasedShare.ts'
import { shaftTorque } from './shaftTorque.ts'
import { specificFuelConsumption } from './specificFuelConsumption.ts'

export default calculation({
  id: 'power-from-fuel', title: 'Power from air and fuel', theme: 'engine', article: 'where-the-heat-goes', cautions: ['emission-law', 'knock', 'model-only'],
  asks: 'What power and torque does this air make, and what fuel does it take?',
  in: {
    air: at.air, lambda: at.lambda, speed: at.speed, manifold: at.manifold, exhaust: boost.turbineInletPressure, compressionRatio: engineCompressionRatio, quality: engineQuality,
    frictionConstant: engineFrictionConstant, frictionSlope: engineFrictionSlope, ethanolShare: fuelEthanol, density: petrolDensity, hydrogen: petrolHydrogen, heat: petrolHeatingValue,
    oiling: sealsBy, premixed: premix, oilDensity: premixDensity, oilHeat: premixHeat,
    rotors: engineRotors, describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift,
    stated: engineDisplacement,
  },
  out: { power, torque, fuel: fuelFlow, meanPressure: meanPressureOf, consumption: specificConsumption },
  curve: ['air', 'power'],
  answer({ air, lambda, speed, manifold, exhaust, compressionRatio, quality, frictionConstant, frictionSlope, ethanolShare, density, hydrogen, heat, oiling, premixed, oilDensity, oilHeat, rotors, ...description }) {
    const burned = { ethanolShare, petrolDensity: density, oilShare: oilShareBurned({ by: oiling, share: premixed }), oilDensity }
    const fuel = fuelFlowForAir({ airFlow: air, stoichiometricRatio: burnedStoichiometry({ ...burned, petrolHydrogen: hydrogen }), lambda })
    const chemical = fuelPower({ fuelFlow: fuel, heatingValue: burnedHeat({ ...burned, petrolHeat: heat, oilHeat }) })
    const efficiency = coldAirEfficiency({ compressionRatio })
    const indicated = indicatedPower({ fuelPower: chemical, releasedShare: releasedShare({ lambda }), ottoEfficiency: efficiency, quality })
    const size = { displacement: describedDisplacement(description), rotors, speed }
    const friction = meanPressurePower({ ...size, meanPressure: frictionMeanPressure({ speed, constant: frictionConstant, slope: frictionSlope }) })
    const pumping = meanPressurePower({ ...size, meanPressure: pumpingMeanPressure({ exhaustPressure: exhaust, manifoldPressure: manifold }) })
    const brake = brakePower({ indicated, friction, pumping })
    if (!(brake > 0)) throw new NoAnswer('power-from-fuel', 'Nothing is left at the shaft here: friction and pumping take all that the gas gives, so there is no consumption for each unit of work.')
    return { power: brake, torque: shaftTorque({ power: brake, speed }), fuel, meanPressure: meanEffectivePressure({ ...size, power: brake }), consumption: specificFuelConsumption({ fuelFlow: fuel, power: brake }) }
  },
  says: () => '{air} of air at lambda {lambda} asks {fuel} of fuel and makes {power}, {torque} at {speed}. That is {consumption} and a mean pressure of {meanPressure} on one chamber per rotor and turn.',
  leavesOut: 'Ignition timing, knock, and what the driveline takes before the wheels.',
})

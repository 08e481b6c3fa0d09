import { calculation } from '../calculation/calculation.ts'
import { airDensity } from '../media/quantities.ts'
import { saturationPressure } from '../media/saturationPressure.ts'
import { vapourPressure } from '../media/vapourPressure.ts'
import { vapourShare } from '../media/vapourShare.ts'
import { airMassFlow } from './airMassFlow.ts'
import { describedDisplacement } from './describedDisplacement.ts'
import { dryAirPressure } from './dryAirPressure.ts'
import {
  engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineRotors, engineShift, engineWidth, siteAirPressure, siteAirTemperature, siteHumidity,
} from './fields.ts'
import { gasDensity } from './gasDensity.ts'
import { at } from './point.ts'
import { airFlow, displacement } from './quantities.ts'

export default calculation({
  id: 'air-flow-at-speed', title: 'Air flow at a speed', theme: 'engine', article: 'how-a-two-rotor-breathes', cautions: ['model-only'],
  asks: 'How much air does the engine take in at this speed and manifold pressure?',
  in: {
    speed: at.speed, manifold: at.manifold, charge: at.charge, ve: at.ve, airPressure: siteAirPressure, airTemperature: siteAirTemperature, humidity: siteHumidity, rotors: engineRotors,
    describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, stated: engineDisplacement,
  },
  out: { air: airFlow, density: airDensity, chamber: displacement },
  curve: ['speed', 'air'],
  answer({ speed, manifold, charge, ve, airPressure, airTemperature, humidity, rotors, ...description }) {
    const share = vapourShare({ vapourPressure: vapourPressure({ humidity, saturation: saturationPressure({ temperature: airTemperature }) }), pressure: airPressure })
    const density = gasDensity({ pressure: dryAirPressure({ pressure: manifold, share }), temperature: charge })
    const chamber = describedDisplacement(description)
    return { air: airMassFlow({ volumetricEfficiency: ve, density, displacement: chamber, rotors, speed }), density, chamber }
  },
  says: () => 'At {speed} and {manifold} the engine takes in {air} of dry air: every rotor fills one chamber of {chamber} in each turn, {ve} full of air at {density}.',
  leavesOut: 'Pulses: this is the mean over a turn. Vapour that condenses in the charge cooler.',
})

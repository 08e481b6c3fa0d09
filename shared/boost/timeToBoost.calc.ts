import { calculation, free } from '../calculation/calculation.ts'
import { angularAcceleration } from '../driveline/quantities.ts'
import { describedDisplacement } from '../engine/describedDisplacement.ts'
import {
  engineCompressionRatio, engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineOverlapFactor, engineRotors, engineShift, engineVeBackPressureRatio, engineVeCurve,
  engineWidth, siteAirPressure, siteAirTemperature,
} from '../engine/fields.ts'
import { boostPressure, chargeTemperature, lambda, shaftSpeed } from '../engine/quantities.ts'
import { blendStoichiometry } from '../fuel/blendStoichiometry.ts'
import { fuelEthanol, petrolDensity, petrolHydrogen } from '../fuel/fields.ts'
import { bar, degC, percent, rpm } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { boostResponse } from './boostResponse.ts'
import { capacityOfAll } from './capacityOfAll.ts'
import { compressorMapOf, coolerLoss, exhaustLoss, inletLoss, turbineCapacity, turbineEfficiencyOf, turboInertiaOf, turboMechanicalEfficiency, turbosFitted } from './fields.ts'
import { manifoldAtBoost } from './manifoldAtBoost.ts'
import { boostShare, responseTime, turbineInletTemperature, turboSpeed } from './quantities.ts'
import { shareOfBoost } from './shareOfBoost.ts'

export default calculation({
  id: 'time-to-boost', title: 'Time to boost after the throttle opens', theme: 'turbo', article: 'response-inertia-and-the-boost-threshold', cautions: ['model-only'],
  asks: 'How long does it take from the throttle’s opening until boost is there?',
  in: {
    boost: free(boostPressure, bar(1), 'Boost wanted'), share: free(boostShare, percent(90)), shaft: free(shaftSpeed, rpm(4500), 'Shaft speed at the step'),
    climb: free(angularAcceleration, rpm(300), 'Rate at which shaft speed climbs: slow in a high gear'), start: free(turboSpeed, rpm(35000), 'Turbocharger speed at the step'), inertia: turboInertiaOf,
    map: compressorMapOf, turbos: turbosFitted, flowCapacity: turbineCapacity, turbineTemperature: free(turbineInletTemperature, degC(800), 'Exhaust temperature before the turbine meanwhile'),
    turbineEfficiency: turbineEfficiencyOf, mechanicalEfficiency: turboMechanicalEfficiency, charge: free(chargeTemperature, degC(40)), lambda: free(lambda, 0.85),
    outside: siteAirPressure, temperature: siteAirTemperature, inletLoss, coolerLoss, exhaustLoss, curve: engineVeCurve, referenceRatio: engineVeBackPressureRatio, overlapFactor: engineOverlapFactor,
    compressionRatio: engineCompressionRatio, rotors: engineRotors, ethanolShare: fuelEthanol, density: petrolDensity, hydrogen: petrolHydrogen,
    describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shiftOfTrochoid: engineShift, stated: engineDisplacement,
  },
  out: { time: responseTime, turbo: role(turboSpeed, 'n_t', 'Turbocharger speed by then'), shaftThen: role(shaftSpeed, 'n', 'Shaft speed by then') },
  curve: ['shaft', 'time'],
  answer({ boost, share, flowCapacity: each, ethanolShare, density, hydrogen, describedBy, generatingRadius, eccentricity, width, shiftOfTrochoid, stated, ...x }) {
    return boostResponse({
      ...x, wanted: manifoldAtBoost({ boost: shareOfBoost({ boost, share }), outside: x.outside }), flowCapacity: capacityOfAll({ each, turbos: x.turbos }),
      displacement: describedDisplacement({ describedBy, generatingRadius, eccentricity, width, shift: shiftOfTrochoid, stated }),
      stoichiometricRatio: blendStoichiometry({ ethanolShare, petrolDensity: density, petrolHydrogen: hydrogen }),
    })
  },
  says: () => 'From {shaft} it takes {time} until {share} of {boost} is there, with the turbocharger at {turbo}. Half the inertia of the wheels takes half the time at the same shaft speed; so does a turbine that gives twice what is left over.',
  leavesOut: 'The engine’s own delay, a manifold that has yet to warm up, pulses, the pipes that fill, and the wastegate, which opens early on many cars.',
})

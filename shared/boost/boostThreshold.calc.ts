import { calculation, free } from '../calculation/calculation.ts'
import { describedDisplacement } from '../engine/describedDisplacement.ts'
import {
  engineCompressionRatio, engineDescribedBy, engineDisplacement, engineEccentricity, engineGeneratingRadius, engineOverlapFactor, engineRotors, engineShift, engineVeBackPressureRatio, engineVeCurve,
  engineWidth, siteAirPressure, siteAirTemperature,
} from '../engine/fields.ts'
import { airFlow, backPressureRatio as backRatio, boostPressure, chargeTemperature, lambda, shaftSpeed } from '../engine/quantities.ts'
import { veAtSpeed } from '../engine/veAtSpeed.ts'
import { blendStoichiometry } from '../fuel/blendStoichiometry.ts'
import { fuelEthanol, petrolDensity, petrolHydrogen } from '../fuel/fields.ts'
import { bar, degC, percent } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { backPressureRatio } from './backPressureRatio.ts'
import { capacityOfAll } from './capacityOfAll.ts'
import { coolerLoss, exhaustLoss, inletLoss, turbineCapacity, turbineEfficiencyOf, turboMechanicalEfficiency, turbosFitted } from './fields.ts'
import { manifoldAtBoost } from './manifoldAtBoost.ts'
import { compressorEfficiency, gasPressure, pressureRatio, turbineInletTemperature } from './quantities.ts'
import { thresholdSpeed } from './thresholdSpeed.ts'
import { turboBalanceAt } from './turboBalanceAt.ts'

export default calculation({
  id: 'boost-threshold', title: 'Boost threshold', theme: 'turbo', article: 'response-inertia-and-the-boost-threshold', cautions: ['model-only'],
  asks: 'From what shaft speed on does the turbocharger make this boost at full throttle?',
  in: {
    boost: free(boostPressure, bar(1)), flowCapacity: turbineCapacity, turbos: turbosFitted, turbineTemperature: free(turbineInletTemperature, degC(880), 'Exhaust temperature before the turbine there'),
    compressorEfficiency: free(compressorEfficiency, percent(70)), turbineEfficiency: turbineEfficiencyOf, mechanicalEfficiency: turboMechanicalEfficiency, charge: free(chargeTemperature, degC(45)), lambda: free(lambda, 0.82),
    outside: siteAirPressure, temperature: siteAirTemperature, inletLoss, coolerLoss, exhaustLoss, curve: engineVeCurve, referenceRatio: engineVeBackPressureRatio, overlapFactor: engineOverlapFactor,
    compressionRatio: engineCompressionRatio, rotors: engineRotors, ethanolShare: fuelEthanol, density: petrolDensity, hydrogen: petrolHydrogen,
    describedBy: engineDescribedBy, generatingRadius: engineGeneratingRadius, eccentricity: engineEccentricity, width: engineWidth, shift: engineShift, stated: engineDisplacement,
  },
  out: { speed: role(shaftSpeed, 'n_th', 'Shaft speed at which boost reaches its target'), air: airFlow, ratio: pressureRatio, before: role(gasPressure, 'p_3', 'Pressure before the turbine'), back: backRatio },
  curve: ['flowCapacity', 'speed'],
  answer({ boost, flowCapacity: each, turbos, ethanolShare, density, hydrogen, describedBy, generatingRadius, eccentricity, width, shift, stated, curve, ...x }) {
    const manifold = manifoldAtBoost({ boost, outside: x.outside })
    const displacement = describedDisplacement({ describedBy, generatingRadius, eccentricity, width, shift, stated })
    const engine = { ...x, manifold, displacement, flowCapacity: capacityOfAll({ each, turbos }), stoichiometricRatio: blendStoichiometry({ ethanolShare, petrolDensity: density, petrolHydrogen: hydrogen }) }
    const speed = thresholdSpeed({ ...engine, curve })
    const { air, ratio, before } = turboBalanceAt({ ...engine, speed, ve: veAtSpeed({ curve, speed }) })
    return { speed, air, ratio, before, back: backPressureRatio({ turbineInlet: before, manifold }) }
  },
  says: () => '{boost} is there from {speed} on: {air} of air at a ratio of {ratio}, with {before} before the turbine. Below that the wastegate is shut and boost is what the exhaust can drive. A smaller turbine brings it down and stands in the way more at the top.',
  leavesOut: 'Pulses, which bring it a little earlier; leaks before the turbine; and time: in a low gear the engine passes this speed before the turbocharger has caught up.',
})

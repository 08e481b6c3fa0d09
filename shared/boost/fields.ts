import { field } from '../build/field.ts'
import { backPressureRatio, chargeTemperature, shaftSpeed } from '../engine/quantities.ts'
import { mediumMap } from '../data/maps/medium.ts'
import { bar, degC, mm, rpm } from '../quantity/si.ts'
import {
  actuatorPressure, boostTarget, compressorMap, coolingAir, diaphragmArea, dischargeCoefficient, effectiveness, efficiencyBand, flowCapacity, gasFlow, hotMaterial, keptShare, leverRatio, lossCoefficient,
  mechanicalEfficiency, rodTravel, springPreload, springRate, turbineEfficiency, turbineInletTemperature, turboCount, turboInertia, turboSpeed, valveCount, valveDiameter,
} from './quantities.ts'

// What is wanted.
export const boostTargetCurve = field('boost.target', boostTarget, {
  x: [rpm(1000), rpm(3000), rpm(3500), rpm(7500), rpm(9000)],
  y: [bar(1), bar(1), bar(1), bar(1), bar(0.95)],
})
export const wantedBySpeed = field('boost.wantedBySpeed', shaftSpeed, rpm(4000), { label: 'Shaft speed by which boost should be there' })

// Compressor.
export const compressorMapOf = field('boost.compressorMap', compressorMap, mediumMap)
export const turbosFitted = field('boost.turbos', turboCount, 1)
export const turboInertiaOf = field('boost.inertia', turboInertia, 9e-5)
export const topSpeed = field('boost.topSpeed', turboSpeed, null, { label: 'Highest turbocharger speed its maker permits' })

// The path of the air.
export const inletLoss = field('boost.inletLoss', lossCoefficient, 30e3, { label: 'Loss coefficient of filter and inlet duct' })
export const coolerLoss = field('boost.coolerLoss', lossCoefficient, 90e3, { label: 'Loss coefficient of charge cooler and its pipes' })
export const coolerRatedFlow = field('boost.coolerRatedFlow', gasFlow, 0.4, { label: 'Charge flow at which the cooler is rated' })
export const coolerRatedEffectiveness = field('boost.coolerRatedEffectiveness', effectiveness, 0.72, { label: 'Effectiveness at that flow' })
export const coolerRatedAir = field('boost.coolerRatedAir', coolingAir, null, { label: 'Cooling air of that rating' })
export const maxChargeTemperature = field('boost.maxChargeTemperature', chargeTemperature, degC(60), { label: 'Highest charge temperature you accept' })

// Turbine and exhaust.
export const turboMechanicalEfficiency = field('boost.mechanicalEfficiency', mechanicalEfficiency, 0.97)
export const turbineCapacity = field('boost.turbineCapacity', flowCapacity, 0.25)
export const turbineEfficiencyOf = field('boost.turbineEfficiency', turbineEfficiency, 0.58)
export const turbineEfficiencyBandOf = field('boost.turbineEfficiencyBand', efficiencyBand, 0.05)
export const exhaustLoss = field('boost.exhaustLoss', lossCoefficient, 100e3, { label: 'Loss coefficient of exhaust pipe and silencer' })
export const maxBackPressureRatio = field('boost.maxBackPressureRatio', backPressureRatio, 1.8, { label: 'Highest back-pressure ratio you accept' })
export const hotMaterialOf = field('boost.hotMaterial', hotMaterial, 'stainless-309', { label: 'Material of manifold and turbine inlet' })
export const hotSideLimit = field('boost.hotSideLimit', turbineInletTemperature, null, { label: 'Highest gas temperature your hot side is stated for' })

// Wastegate and its actuator.
export const wastegateDiameter = field('boost.wastegate.diameter', valveDiameter, mm(38))
export const wastegateNumber = field('boost.wastegate.number', valveCount, 1)
export const wastegateDischarge = field('boost.wastegate.discharge', dischargeCoefficient, 0.7, { label: 'Discharge coefficient of the wastegate, wide open' })
export const springPreloadOf = field('boost.actuator.springPreload', springPreload, 420)
export const springRateOf = field('boost.actuator.springRate', springRate, 9000)
export const diaphragmAreaOf = field('boost.actuator.diaphragmArea', diaphragmArea, 45e-4)
export const actuatorTravel = field('boost.actuator.travel', rodTravel, mm(11))
export const actuatorLever = field('boost.actuator.leverRatio', leverRatio, 1)
export const firstMovement = field('boost.actuator.firstMovement', actuatorPressure, null, { label: 'Bench pressure of first movement' })
export const fullTravel = field('boost.actuator.fullTravel', actuatorPressure, null, { label: 'Bench pressure of full travel' })
export const controlShare = field('boost.actuator.controlShare', keptShare, 0.35, { label: 'Largest share of boost that the control valve keeps from opening the wastegate' })

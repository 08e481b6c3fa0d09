import { field } from '../build/field.ts'
import { dischargeCoefficient } from '../boost/quantities.ts'
import { cm3, deg, degC, kPa, mm, percent, rpm } from '../quantity/si.ts'
import {
  airPressure, airTemperature, backPressureRatio, chargeTemperature, compressionExponent, compressionRatio, describedBy, displacement, eccentricity, flankGap, frictionConstant, frictionSlope, generatingRadius,
  housingWidth, humidity, indicatedQuality, lambda, lambdaCurve, manifoldPressure, overlapFactor, parallelShift, plateAngle, plugVolume, recessVolume, rotorMass, rotors, shaftSpeed, throttleBore,
  throttlePosition, throttleShaft, veCurve, volumetricEfficiency,
} from './quantities.ts'

// The air outside.
export const siteAirPressure = field('site.airPressure', airPressure, kPa(101.325))
export const siteAirTemperature = field('site.airTemperature', airTemperature, degC(25))
export const siteHumidity = field('site.humidity', humidity, 0.4)

// The engine by its parts, or by its displacement.
export const engineDescribedBy = field('engine.describedBy', describedBy, 'geometry')
export const engineGeneratingRadius = field('engine.generatingRadius', generatingRadius, mm(105))
export const engineEccentricity = field('engine.eccentricity', eccentricity, mm(15))
export const engineWidth = field('engine.width', housingWidth, mm(80))
export const engineShift = field('engine.shift', parallelShift, mm(3))
export const engineDisplacement = field('engine.displacement', displacement, cm3(673))
export const engineRotors = field('engine.rotors', rotors, 2)
export const engineCompressionRatio = field('engine.compressionRatio', compressionRatio, 9)
export const engineRecess = field('engine.recess', recessVolume, null)
export const engineFlankGap = field('engine.flankGap', flankGap, mm(0.2))
export const enginePlugVolume = field('engine.plugVolume', plugVolume, cm3(1))
export const engineRotorMass = field('engine.rotorMass', rotorMass, 4.3)
export const engineSpeedLimit = field('engine.speedLimit', shaftSpeed, rpm(8000), { label: 'Highest shaft speed used' })

// How it breathes and burns.
export const engineVeCurve = field('engine.veCurve', veCurve, {
  x: [rpm(1000), rpm(2000), rpm(3000), rpm(4000), rpm(5000), rpm(6000), rpm(7000), rpm(8000), rpm(9000)],
  y: [0.74, 0.8, 0.86, 0.91, 0.95, 0.98, 0.96, 0.91, 0.84],
})
export const engineVeBackPressureRatio = field('engine.veBackPressureRatio', backPressureRatio, 1, { label: 'Back-pressure ratio of the volumetric-efficiency curve' })
export const engineOverlapFactor = field('engine.overlapFactor', overlapFactor, 0.1)
export const engineQuality = field('engine.quality', indicatedQuality, 0.57)
export const engineFrictionConstant = field('engine.frictionConstant', frictionConstant, kPa(60))
export const engineFrictionSlope = field('engine.frictionSlope', frictionSlope, kPa(12))
export const engineLambdaCurve = field('engine.lambdaCurve', lambdaCurve, {
  x: [kPa(30), kPa(80), kPa(100), kPa(130), kPa(170), kPa(250)],
  y: [0.97, 0.95, 0.9, 0.84, 0.8, 0.77],
})
export const engineCompressionExponent = field('engine.compressionExponent', compressionExponent, 1.32)
export const engineMapSensorMax = field('engine.mapSensorMax', manifoldPressure, null, { label: 'Highest pressure the manifold sensor reads' })

// The throttle.
export const engineThrottlePosition = field('engine.throttle.position', throttlePosition, 1)
export const engineThrottleBore = field('engine.throttle.bore', throttleBore, mm(75))
export const engineThrottleShaft = field('engine.throttle.shaft', throttleShaft, mm(9))
export const engineThrottleClosed = field('engine.throttle.closedAngle', plateAngle, deg(6), { label: 'Angle of the shut throttle plate' })
export const engineThrottleDischarge = field('engine.throttle.discharge', dischargeCoefficient, 0.85, { label: 'Discharge coefficient of the throttle' })

// Idle, a point of its own.
export const idleSpeed = field('idle.speed', shaftSpeed, rpm(900), { label: 'Idle speed' })
export const idleManifoldPressure = field('idle.manifoldPressure', manifoldPressure, kPa(45), { label: 'Manifold pressure at idle' })
export const idleLambda = field('idle.lambda', lambda, 0.95, { label: 'Lambda at idle' })
export const idleChargeTemperature = field('idle.chargeTemperature', chargeTemperature, degC(45), { label: 'Charge temperature at idle' })
export const idleVolumetricEfficiency = field('idle.volumetricEfficiency', volumetricEfficiency, percent(55), { label: 'Volumetric efficiency at idle' })

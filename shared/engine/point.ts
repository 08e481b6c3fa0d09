import { pointValue } from '../build/pointValue.ts'
import { airFlow, chargeTemperature, lambda, manifoldPressure, power, shaftSpeed, torque, volumetricEfficiency } from './quantities.ts'

/** What the coupled solve finds about the engine at one shaft speed. */
export const at = {
  speed: pointValue('engine.speed', shaftSpeed),
  manifold: pointValue('engine.manifoldPressure', manifoldPressure),
  charge: pointValue('engine.chargeTemperature', chargeTemperature),
  air: pointValue('engine.airFlow', airFlow),
  ve: pointValue('engine.volumetricEfficiency', volumetricEfficiency),
  lambda: pointValue('engine.lambda', lambda),
  power: pointValue('engine.power', power),
  torque: pointValue('engine.torque', torque),
} as const

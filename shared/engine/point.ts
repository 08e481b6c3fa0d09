import { pointValue } from '../build/pointValue.ts'
import { role } from '../quantity/quantity.ts'
import {
  airFlow, backPressureRatio, chargeTemperature, endPressure, endTemperature, lambda, manifoldPressure, meanPressure, power, sealSpeed, shaftSpeed, specificConsumption, torque,
  volumetricEfficiency,
} from './quantities.ts'

/** What the coupled solve and its links find about the engine at one shaft speed. */
export const at = {
  speed: pointValue('engine.speed', shaftSpeed),
  manifold: pointValue('engine.manifoldPressure', manifoldPressure),
  charge: pointValue('engine.chargeTemperature', chargeTemperature),
  air: pointValue('engine.airFlow', airFlow),
  ve: pointValue('engine.volumetricEfficiency', volumetricEfficiency),
  lambda: pointValue('engine.lambda', lambda),
  power: pointValue('engine.power', power),
  torque: pointValue('engine.torque', torque),
  backPressureRatio: pointValue('engine.backPressureRatio', backPressureRatio),
  throttleInlet: pointValue('engine.throttleInletPressure', role(manifoldPressure, 'p_v', 'Pressure before the throttle')),
  // Made by links of the chain from the values above.
  meanPressure: pointValue('engine.meanEffectivePressure', meanPressure),
  specificConsumption: pointValue('engine.specificFuelConsumption', specificConsumption),
  sealSpeed: pointValue('engine.apexSealSpeed', sealSpeed, 'Highest sliding speed of the apex seal'),
  endPressure: pointValue('engine.endPressure', endPressure),
  endTemperature: pointValue('engine.endTemperature', endTemperature),
} as const

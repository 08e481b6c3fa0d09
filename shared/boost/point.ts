import { pointValue } from '../build/pointValue.ts'
import { backPressureRatio, boostPressure, shaftSpeed } from '../engine/quantities.ts'
import { role, type Quantity } from '../quantity/quantity.ts'
import { kPa } from '../quantity/si.ts'
import { type Kind } from '../quantity/kinds.ts'
import {
  bypassShare, compressorEfficiency, correctedFlow, correctedSpeed, flowMargin, gasFlow, gasPressure, gasTemperature, pressureRatio, speedShare, turboPower,
  turboSpeed, speedOverLowestLine, actuatorPressure, turbineInletTemperature,
} from './quantities.ts'

/** The same quantity where its place in the chain narrows what it can sensibly be. */
const within = <K extends Kind>(of: Quantity<K>, low: number, high: number): Quantity<K> => ({ ...of, range: [low, high] })

/** What the coupled solve and its links find about boost at one shaft speed. */
export const at = {
  compressorInletPressure: pointValue('boost.compressorInletPressure', within(role(gasPressure, 'p_1', 'Compressor inlet pressure'), kPa(50), kPa(110))),
  compressorOutletPressure: pointValue('boost.compressorOutletPressure', within(role(gasPressure, 'p_2', 'Compressor outlet pressure'), kPa(60), kPa(450))),
  compressorOutletTemperature: pointValue('boost.compressorOutletTemperature', role(gasTemperature, 'T_2', 'Compressor outlet temperature')),
  pressureRatio: pointValue('boost.pressureRatio', pressureRatio),
  correctedFlow: pointValue('boost.correctedFlow', correctedFlow),
  compressorSpeed: pointValue('boost.compressorSpeed', turboSpeed),
  compressorEfficiency: pointValue('boost.compressorEfficiency', compressorEfficiency),
  compressorPower: pointValue('boost.compressorPower', role(turboPower, 'P_c', 'Compressor power')),
  turbineInletPressure: pointValue('boost.turbineInletPressure', within(role(gasPressure, 'p_3', 'Pressure before the turbine'), kPa(85), kPa(600))),
  turbineOutletPressure: pointValue('boost.turbineOutletPressure', within(role(gasPressure, 'p_4', 'Pressure after the turbine'), kPa(55), kPa(250))),
  turbineFlow: pointValue('boost.turbineFlow', within(role(gasFlow, 'm_t', 'Flow through the turbine'), 0.002, 1)),
  wastegateFlow: pointValue('boost.wastegateFlow', role(gasFlow, 'm_w', 'Flow through the wastegate')),
  exhaustFlow: pointValue('boost.exhaustFlow', role(gasFlow, 'm_x', 'Exhaust flow')),
  boost: pointValue('boost.boost', boostPressure),
  // The same point if wastegate and actuator did all that is asked of them.
  asked: pointValue('boost.asked', role(boostPressure, 'p_w', 'Boost asked of the wastegate')),
  inletPressureAsked: pointValue('boost.inletPressureAsked', within(role(gasPressure, 'p_3w', 'Pressure before the turbine at the boost asked'), kPa(85), kPa(600))),
  outletPressureAsked: pointValue('boost.outletPressureAsked', within(role(gasPressure, 'p_4w', 'Pressure after the turbine at the boost asked'), kPa(55), kPa(250))),
  wastegateAsked: pointValue('boost.wastegateAsked', role(gasFlow, 'm_ww', 'Flow the wastegate must pass to hold the boost asked')),
  exhaustFlowAsked: pointValue('boost.exhaustFlowAsked', role(gasFlow, 'm_xw', 'Exhaust flow at the boost asked')),
  // Made by links of the chain from the values above.
  surgeFlow: pointValue('boost.surgeFlow', role(correctedFlow, 'm_s', 'Flow at surge, same pressure ratio')),
  chokeFlow: pointValue('boost.chokeFlow', role(correctedFlow, 'm_k', 'Flow at the right edge of the map, same pressure ratio')),
  surgeMargin: pointValue('boost.surgeMargin', role(flowMargin, 'S_s', 'Surge margin')),
  chokeMargin: pointValue('boost.chokeMargin', role(flowMargin, 'S_k', 'Choke margin')),
  correctedSpeed: pointValue('boost.correctedSpeed', correctedSpeed),
  speedLimit: pointValue('boost.speedLimit', role(turboSpeed, 'n_max', 'Highest permitted turbocharger speed')),
  topSpeedShare: pointValue('boost.topSpeedShare', speedShare),
  overLowestLine: pointValue('boost.overLowestLine', speedOverLowestLine),
  wastegateCapacity: pointValue('boost.wastegateCapacity', role(gasFlow, 'm_max', 'What the wastegate passes wide open')),
  bypassShare: pointValue('boost.bypassShare', bypassShare),
  actuatorHeld: pointValue('boost.actuatorHeld', role(actuatorPressure, 'p_h', 'Boost up to which the actuator can keep the wastegate shut')),
  actuatorOpens: pointValue('boost.actuatorOpens', role(actuatorPressure, 'p_f', 'Boost that opens the wastegate as far as this point asks')),
  backPressureRatioLow: pointValue('boost.backPressureRatioLow', backPressureRatio, 'Back-pressure ratio, low end of the band'),
  backPressureRatioHigh: pointValue('boost.backPressureRatioHigh', backPressureRatio, 'Back-pressure ratio, high end of the band'),
  hotSideTemperature: pointValue('boost.hotSideTemperature', turbineInletTemperature, 'Highest gas temperature for the hot side'),
  thresholdSpeed: pointValue('boost.thresholdSpeed', role(shaftSpeed, 'n_th', 'Shaft speed at which boost reaches its target')),
} as const

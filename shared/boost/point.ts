import { pointValue } from '../build/pointValue.ts'
import { backPressureRatio, boostPressure, shaftSpeed } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import {
  bypassShare, compressorEfficiency, correctedFlow, correctedSpeed, flowMargin, gasFlow, gasPressure, gasTemperature, pressureRatio, speedShare, turboPower,
  turboSpeed, estimatedOnMap, actuatorPressure, turbineInletTemperature,
} from './quantities.ts'

/** What the coupled solve and its links find about boost at one shaft speed. */
export const at = {
  compressorInletPressure: pointValue('boost.compressorInletPressure', role(gasPressure, 'p_1', 'Compressor inlet pressure')),
  compressorOutletPressure: pointValue('boost.compressorOutletPressure', role(gasPressure, 'p_2', 'Compressor outlet pressure')),
  compressorOutletTemperature: pointValue('boost.compressorOutletTemperature', role(gasTemperature, 'T_2', 'Compressor outlet temperature')),
  pressureRatio: pointValue('boost.pressureRatio', pressureRatio),
  correctedFlow: pointValue('boost.correctedFlow', correctedFlow),
  compressorSpeed: pointValue('boost.compressorSpeed', turboSpeed),
  compressorEfficiency: pointValue('boost.compressorEfficiency', compressorEfficiency),
  compressorPower: pointValue('boost.compressorPower', role(turboPower, 'P_c', 'Compressor power')),
  turbineInletPressure: pointValue('boost.turbineInletPressure', role(gasPressure, 'p_3', 'Pressure before the turbine')),
  turbineOutletPressure: pointValue('boost.turbineOutletPressure', role(gasPressure, 'p_4', 'Pressure after the turbine')),
  turbineFlow: pointValue('boost.turbineFlow', role(gasFlow, 'm_t', 'Flow through the turbine')),
  wastegateFlow: pointValue('boost.wastegateFlow', role(gasFlow, 'm_w', 'Flow through the wastegate')),
  exhaustFlow: pointValue('boost.exhaustFlow', role(gasFlow, 'm_x', 'Exhaust flow')),
  boost: pointValue('boost.boost', boostPressure),
  // Made by links of the chain from the values above.
  surgeFlow: pointValue('boost.surgeFlow', role(correctedFlow, 'm_s', 'Flow at surge, same pressure ratio')),
  chokeFlow: pointValue('boost.chokeFlow', role(correctedFlow, 'm_k', 'Flow at the right edge of the map, same pressure ratio')),
  surgeMargin: pointValue('boost.surgeMargin', role(flowMargin, 'S_s', 'Surge margin')),
  chokeMargin: pointValue('boost.chokeMargin', role(flowMargin, 'S_k', 'Choke margin')),
  correctedSpeed: pointValue('boost.correctedSpeed', correctedSpeed),
  speedLimit: pointValue('boost.speedLimit', role(turboSpeed, 'n_max', 'Highest permitted turbocharger speed')),
  topSpeedShare: pointValue('boost.topSpeedShare', speedShare),
  estimated: pointValue('boost.estimated', estimatedOnMap),
  wastegateCapacity: pointValue('boost.wastegateCapacity', role(gasFlow, 'm_max', 'What the wastegate passes wide open')),
  bypassShare: pointValue('boost.bypassShare', bypassShare),
  actuatorHeld: pointValue('boost.actuatorHeld', role(actuatorPressure, 'p_h', 'Boost up to which the actuator can keep the wastegate shut')),
  actuatorFullBoost: pointValue('boost.actuatorFullBoost', role(actuatorPressure, 'p_f', 'Boost at which the actuator has opened the wastegate fully')),
  backPressureRatioLow: pointValue('boost.backPressureRatioLow', backPressureRatio, 'Back-pressure ratio, low end of the band'),
  backPressureRatioHigh: pointValue('boost.backPressureRatioHigh', backPressureRatio, 'Back-pressure ratio, high end of the band'),
  hotSideTemperature: pointValue('boost.hotSideTemperature', turbineInletTemperature, 'Highest gas temperature for the hot side'),
  thresholdSpeed: pointValue('boost.thresholdSpeed', role(shaftSpeed, 'n_th', 'Shaft speed at which boost reaches its target')),
} as const

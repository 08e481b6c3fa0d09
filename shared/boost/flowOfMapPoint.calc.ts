import { calculation, free } from '../calculation/calculation.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { degC, kPa } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { at } from './point.ts'
import { actualFlow } from './actualFlow.ts'
import { actualSpeed } from './actualSpeed.ts'
import { turbosFitted } from './fields.ts'
import { flowOfAll } from './flowOfAll.ts'
import { gasFlow, gasPressure, gasTemperature, turboSpeed } from './quantities.ts'

export default calculation({
  id: 'flow-of-a-map-point', title: 'What a point of a map is on the car', theme: 'turbo', article: 'reading-a-compressor-map', cautions: ['model-only'],
  asks: 'What air flow and what turbocharger speed does this point of the map stand for here?',
  in: {
    corrected: at.correctedFlow, correctedSpeed: at.correctedSpeed, temperature: siteAirTemperature, pressure: at.compressorInletPressure, turbos: turbosFitted,
    referenceTemperature: free(gasTemperature, degC(25), 'Reference temperature of the map'), referencePressure: free(gasPressure, kPa(100), 'Reference pressure of the map'),
  },
  out: { flow: role(gasFlow, 'm', 'Air flow of all turbochargers'), speed: turboSpeed },
  curve: ['pressure', 'flow'],
  answer({ corrected, correctedSpeed, temperature, pressure, turbos, referenceTemperature, referencePressure }) {
    return { flow: flowOfAll({ flow: actualFlow({ corrected, temperature, pressure, referenceTemperature, referencePressure }), turbos }), speed: actualSpeed({ corrected: correctedSpeed, temperature, referenceTemperature }) }
  },
  says: () => '{corrected} on the map is {flow} of air at {temperature} and {pressure} before the compressor; {correctedSpeed} is {speed} of the shaft. In thin air the same place on the map is less air, in hot air more speed.',
  leavesOut: 'Moisture of the air, and the speed of the air in the duct.',
})

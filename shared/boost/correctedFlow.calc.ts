import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { degC, kPa } from '../quantity/si.ts'
import { at } from './point.ts'
import { correctedFlow } from './correctedFlow.ts'
import { correctedSpeed } from './correctedSpeed.ts'
import { turbosFitted } from './fields.ts'
import { flowOfOne } from './flowOfOne.ts'
import { correctedFlow as flowOf, correctedSpeed as speedOf, gasPressure, gasTemperature } from './quantities.ts'

export default calculation({
  id: 'corrected-flow-of-a-point', title: 'Where a flow lies on a map', theme: 'turbo', article: 'reading-a-compressor-map', cautions: ['model-only'],
  asks: 'What flow and speed does the map know this point by?',
  in: {
    flow: engine.air, turbos: turbosFitted, speed: at.compressorSpeed, temperature: siteAirTemperature, pressure: at.compressorInletPressure,
    referenceTemperature: free(gasTemperature, degC(25), 'Reference temperature of the map'), referencePressure: free(gasPressure, kPa(100), 'Reference pressure of the map'),
  },
  out: { corrected: flowOf, correctedSpeed: speedOf },
  curve: ['temperature', 'corrected'],
  answer({ flow, turbos, speed, temperature, pressure, referenceTemperature, referencePressure }) {
    return { corrected: correctedFlow({ flow: flowOfOne({ flow, turbos }), temperature, pressure, referenceTemperature, referencePressure }), correctedSpeed: correctedSpeed({ speed, temperature, referenceTemperature }) }
  },
  says: () => '{flow} of air at the compressor’s mouth is {corrected} on the map, and {speed} of its shaft is {correctedSpeed}. Two maps with other references can be laid side by side only in such numbers.',
  leavesOut: 'Moisture of the air, and the speed of the air in the duct.',
})

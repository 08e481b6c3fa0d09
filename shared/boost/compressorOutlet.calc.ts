import { calculation } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { at } from './point.ts'
import { compressorOutletTemperature } from './compressorOutletTemperature.ts'
import { compressorPower } from './compressorPower.ts'
import { pressureRatio } from './pressureRatio.ts'
import { gasTemperature, pressureRatio as ratioOf, turboPower } from './quantities.ts'

export default calculation({
  id: 'compressor-outlet', title: 'Air after the compressor', theme: 'turbo', article: 'reading-a-compressor-map', cautions: ['hot-metal', 'model-only'],
  asks: 'How hot does the compressor make the air, and what power does it take?',
  in: {
    inletTemperature: siteAirTemperature, inlet: at.compressorInletPressure, outlet: at.compressorOutletPressure,
    efficiency: at.compressorEfficiency, flow: engine.air,
  },
  out: { ratio: ratioOf, outletTemperature: gasTemperature, power: turboPower },
  curve: ['outlet', 'outletTemperature'],
  answer({ inletTemperature, inlet, outlet, efficiency, flow }) {
    const ratio = pressureRatio({ outlet, inlet })
    const outletTemperature = compressorOutletTemperature({ inletTemperature, ratio, efficiency })
    return { ratio, outletTemperature, power: compressorPower({ flow, inletTemperature, outletTemperature }) }
  },
  says: () => 'At a pressure ratio of {ratio} the air leaves the compressor at {outletTemperature}, and the shaft must bring {power}.',
  leavesOut: 'Heat that the turbine side gives the compressor housing; moisture; speed of the air in the pipes.',
})

import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { degC, kPa } from '../quantity/si.ts'
import { compressorEfficiencyFrom } from './compressorEfficiencyFrom.ts'
import { compressorPower } from './compressorPower.ts'
import { pressureRatio } from './pressureRatio.ts'
import { at as engine } from '../engine/point.ts'
import { compressorEfficiency, gasPressure, gasTemperature, pressureRatio as ratioOf, turboPower } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

export default calculation({
  id: 'compressor-efficiency-measured', title: 'Compressor efficiency from a log', theme: 'turbo', article: 'reading-a-compressor-map', cautions: ['hot-metal', 'model-only'],
  asks: 'How well does the compressor work here, by two temperatures and two pressures?',
  in: {
    inletTemperature: free(gasTemperature, degC(25), 'Temperature logged before the compressor'), outletTemperature: free(gasTemperature, degC(118), 'Temperature logged after the compressor'), inlet: free(gasPressure, kPa(98), 'Pressure logged before the compressor'), outlet: free(gasPressure, kPa(205), 'Pressure logged after the compressor'), flow: engine.air,
  },
  out: { efficiency: compressorEfficiency, ratio: ratioOf, power: role(turboPower, 'P_c', 'Compressor power') },
  curve: ['outletTemperature', 'efficiency'],
  answer({ inletTemperature, outletTemperature, inlet, outlet, flow }) {
    if (!(outlet > inlet && outletTemperature > inletTemperature)) throw new NoAnswer('compressor', 'A compressor that works leaves its air at more pressure and warmer than it found it: look at both pairs of readings.')
    const ratio = pressureRatio({ outlet, inlet })
    const efficiency = compressorEfficiencyFrom({ inletTemperature, outletTemperature, ratio })
    if (efficiency > 1) throw new NoAnswer('compressor', 'By these readings the compressor would be better than the ideal one. The probe after it reads low, most likely because it has not warmed up or sits in a boss.')
    return { efficiency, ratio, power: compressorPower({ flow, inletTemperature, outletTemperature }) }
  },
  says: () => 'From {inletTemperature} to {outletTemperature} at a ratio of {ratio} the compressor works at {efficiency} and takes {power}. Compare that with the map at the same place: much less means a rubbing wheel, a leak that makes it work harder, or heat from the turbine side.',
  leavesOut: 'Heat through the housing, moisture, and how evenly the probe stands in the stream.',
})

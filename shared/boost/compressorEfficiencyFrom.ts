import { formula, type About } from '../formula/formula.ts'
import { airHeatRatio } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { compressorEfficiency, gasTemperature, pressureRatio } from './quantities.ts'

/** Isentropic efficiency of a compressor from temperatures and pressures on both sides. */
export const about = {
  name: 'Compressor efficiency from readings',
  in: { inletTemperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), outletTemperature: role(gasTemperature, 'T_2', 'Compressor outlet temperature'), ratio: pressureRatio },
  out: compressorEfficiency,
  constants: { airHeatRatio },
  equation: 'inletTemperature * (ratio^((airHeatRatio - 1) / airHeatRatio) - 1) / (outletTemperature - inletTemperature)',
  source: ['cohen-gas-turbine', 'section 2.3, isentropic efficiency of a compressor'],
  notes: 'Source states no range. Heat from the turbine side warms the outlet and makes the compressor look worse, most at low speed; a probe that reads low makes it look better.',
  sample: { inletTemperature: [260, 320], outletTemperature: [330, 500] },
} as const satisfies About

export const compressorEfficiencyFrom = formula<typeof about>('compressor-efficiency-from', {}, ({ inletTemperature, outletTemperature, ratio }) =>
  (inletTemperature * (ratio ** ((airHeatRatio.value - 1) / airHeatRatio.value) - 1)) / (outletTemperature - inletTemperature))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airHeatRatio } from '../formula/constants.ts'
import { compressorEfficiency, gasTemperature, pressureRatio } from './quantities.ts'

/** Temperature of the air leaving a compressor, from isentropic efficiency. */
export const about = {
  name: 'Temperature after the compressor',
  in: { inletTemperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), ratio: pressureRatio, efficiency: compressorEfficiency },
  out: role(gasTemperature, 'T_2', 'Compressor outlet temperature'),
  constants: { airHeatRatio },
  equation: 'inletTemperature * (1 + (ratio^((airHeatRatio - 1) / airHeatRatio) - 1) / efficiency)',
  source: ['cohen-gas-turbine', 'section 2.3, isentropic efficiency of a compressor'],
  notes: 'Source states no range. Constant specific heats of cold air: at 200 °C the real rise is about 1 % smaller. No heat from the turbine side.',
} as const satisfies About

export const compressorOutletTemperature = formula<typeof about>('compressor-outlet-temperature', {}, ({ inletTemperature, ratio, efficiency }) =>
  inletTemperature * (1 + (ratio ** ((airHeatRatio.value - 1) / airHeatRatio.value) - 1) / efficiency))

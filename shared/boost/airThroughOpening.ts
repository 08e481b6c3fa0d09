import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, airHeatRatio } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { wastegateCapacity } from './wastegateCapacity.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure, gasTemperature } from './quantities.ts'

/** Flow of air through an opening between two pressures. */
export const about = {
  name: 'Air through an opening',
  in: { area: flowArea, dischargeCoefficient, inletPressure: role(gasPressure, 'p_v', 'Pressure before the opening'), inletTemperature: gasTemperature, outletPressure: role(gasPressure, 'p_a', 'Pressure behind the opening') },
  out: gasFlow,
  constants: { airGasConstant, airHeatRatio },
  steps: ['The flow of any gas through an opening, choked or not, with the gas constant and the ratio of specific heats of air.'],
  source: ['heywood-ice', 'appendix C, flow through a restriction'],
  notes: 'Ideal gas. No flow where the pressure before is not the higher.',
} as const satisfies About

export const airThroughOpening = formula<typeof about>('air-through-opening', {}, (x) => wastegateCapacity({ ...x, heatRatio: airHeatRatio.value, gasConstant: airGasConstant.value }))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { standardPressure, standardTemperature } from '../formula/constants.ts'
import { flowCapacity, gasFlow, gasPressure, turbineInletTemperature } from './quantities.ts'

/** Flow capacity of a turbine from one point at which flow and pressures are known, wastegate shut. */
export const about = {
  name: 'Turbine flow capacity from one point',
  in: {
    flow: role(gasFlow, 'm_t', 'Flow through the turbine'), inletTemperature: turbineInletTemperature,
    inletPressure: role(gasPressure, 'p_3', 'Pressure before the turbine'), outletPressure: role(gasPressure, 'p_4', 'Pressure after the turbine'),
  },
  out: flowCapacity,
  constants: { standardPressure, standardTemperature },
  equation: 'flow * standardPressure * sqrt(inletTemperature / standardTemperature) / sqrt(inletPressure^2 - outletPressure^2)',
  source: ['cooke-stodola', 'ellipse law with the critical ratio taken as zero, turned round'],
  notes: 'Source states no range. Works on one point of a maker’s curve, or one logged pressure with the wastegate shut.',
  sample: { inletPressure: [150e3, 500e3], outletPressure: [90e3, 140e3] },
} as const satisfies About

export const turbineCapacityFrom = formula<typeof about>('turbine-capacity-from', {}, ({ flow, inletTemperature, inletPressure, outletPressure }) =>
  (flow * standardPressure.value * Math.sqrt(inletTemperature / standardTemperature.value)) / Math.sqrt(inletPressure ** 2 - outletPressure ** 2))

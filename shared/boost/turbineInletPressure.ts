import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { standardPressure, standardTemperature } from '../formula/constants.ts'
import { flowCapacity, gasFlow, gasPressure, turbineInletTemperature } from './quantities.ts'

/** Pressure before a turbine at which it swallows a given flow, by the ellipse law. */
export const about = {
  name: 'Pressure before the turbine for a flow',
  in: {
    flow: role(gasFlow, 'm_t', 'Flow through the turbine'), inletTemperature: turbineInletTemperature,
    outletPressure: role(gasPressure, 'p_4', 'Pressure after the turbine'), flowCapacity,
  },
  out: role(gasPressure, 'p_3', 'Pressure before the turbine'),
  constants: { standardPressure, standardTemperature },
  equation: 'sqrt(outletPressure^2 + (flow * standardPressure / flowCapacity)^2 * inletTemperature / standardTemperature)',
  source: ['cooke-stodola', 'ellipse law with the critical ratio taken as zero, turned round'],
  notes: 'Source states no range. As for the flow through the turbine.',
} as const satisfies About

export const turbineInletPressure = formula<typeof about>('turbine-inlet-pressure', {}, ({ flow, inletTemperature, outletPressure, flowCapacity: capacity }) =>
  Math.sqrt(outletPressure ** 2 + ((flow * standardPressure.value) / capacity) ** 2 * (inletTemperature / standardTemperature.value)))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { standardPressure, standardTemperature } from '../formula/constants.ts'
import { flowCapacity, gasFlow, gasPressure, turbineInletTemperature } from './quantities.ts'

/** Mass flow through a turbine by the ellipse law. The capacity is the flow it nears at a large expansion ratio, counted at 288.15 K and 101.325 kPa. */
export const about = {
  name: 'Flow through the turbine',
  in: {
    inletPressure: role(gasPressure, 'p_3', 'Pressure before the turbine'), inletTemperature: turbineInletTemperature,
    outletPressure: role(gasPressure, 'p_4', 'Pressure after the turbine'), flowCapacity,
  },
  out: role(gasFlow, 'm_t', 'Flow through the turbine'),
  constants: { standardPressure, standardTemperature },
  equation: 'flowCapacity / standardPressure * sqrt(standardTemperature / inletTemperature) * sqrt(inletPressure^2 - outletPressure^2)',
  source: ['cooke-stodola', 'ellipse law with the critical ratio taken as zero, as for stages in series'],
  notes: 'Source states no range. Nozzle and wheel share the expansion, so it chokes far later than one nozzle; the law was found on steam turbines of several stages and is used for one radial stage as the nearest published form. Mean flow only: pulses are left out. No flow when the pressure before is not the higher.',
  sample: { inletPressure: [150e3, 500e3], outletPressure: [90e3, 140e3] },
} as const satisfies About

export const turbineFlow = formula<typeof about>('turbine-flow', {}, ({ inletPressure, inletTemperature, outletPressure, flowCapacity: capacity }) =>
  (capacity / standardPressure.value) * Math.sqrt(standardTemperature.value / inletTemperature) * Math.sqrt(Math.max(0, inletPressure * inletPressure - outletPressure * outletPressure)))

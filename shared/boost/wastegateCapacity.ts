import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { chokedFlow } from './chokedFlow.ts'
import { criticalPressureRatio } from './criticalPressureRatio.ts'
import { subsonicFlow } from './subsonicFlow.ts'
import { dischargeCoefficient, flowArea, gasFlow, gasPressure, heatRatio, specificGasConstant, turbineInletTemperature } from './quantities.ts'

/** Flow that an opening of a given area passes: by the choked branch where the speed of sound is reached, else by the subsonic one. */
export const about = {
  name: 'What a wastegate passes wide open',
  in: {
    area: flowArea, dischargeCoefficient, inletPressure: role(gasPressure, 'p_3', 'Pressure before the opening'), inletTemperature: turbineInletTemperature, outletPressure: role(gasPressure, 'p_4', 'Pressure behind the opening'),
    heatRatio, gasConstant: specificGasConstant,
  },
  out: role(gasFlow, 'm_max', 'What the wastegate passes wide open'),
  steps: [
    'Compare pressure behind over pressure before with the critical pressure ratio.',
    'At or below it the flow is the choked flow; above it the subsonic flow. The two meet there.',
    'No flow where the pressure before is not the higher.',
  ],
  source: ['heywood-ice', 'appendix C, flow through a restriction'],
  notes: 'Ideal gas; the discharge coefficient takes up friction and contraction. What the valve passes in place, with its turn into the pipe, is known only from a log.',
} as const satisfies About

export const wastegateCapacity = formula<typeof about>('wastegate-capacity', {}, (x) => {
  const { inletPressure, outletPressure, heatRatio: gamma } = x
  if (outletPressure >= inletPressure) return 0
  return outletPressure / inletPressure <= criticalPressureRatio({ heatRatio: gamma }) ? chokedFlow(x) : subsonicFlow(x)
})

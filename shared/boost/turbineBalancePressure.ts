import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { expansionRatio } from './expansionRatio.ts'
import { turbineFlow } from './turbineFlow.ts'
import { turbinePower } from './turbinePower.ts'
import { flowCapacity, gasPressure, gasSpecificHeat, heatRatio, turbineEfficiency, turbineInletTemperature, turboPower } from './quantities.ts'

/** Pressure before the turbine at which it gives a wanted power, its flow following the ellipse law. */
export const about = {
  name: 'Pressure before the turbine for a power',
  in: {
    power: role(turboPower, 'P_t', 'Turbine power'), outletPressure: role(gasPressure, 'p_4', 'Pressure after the turbine'), inletTemperature: turbineInletTemperature, flowCapacity,
    efficiency: turbineEfficiency, specificHeat: gasSpecificHeat, heatRatio,
  },
  out: role(gasPressure, 'p_3', 'Pressure before the turbine'),
  steps: [
    'Power rises with the pressure before the turbine, from nothing at that behind it: double the ratio until it gives enough.',
    'Close in on the pressure at which turbine flow by the ellipse law, times heat, temperature, efficiency and the isentropic drop, is the wanted power.',
  ],
  source: ['derived', 'turbine flow and turbine power, solved for the pressure by Brent’s method'],
  notes: 'Mean values. Whether the engine gives the turbine that much flow is another question: the rest goes through the wastegate.',
} as const satisfies About

export const turbineBalancePressure = formula<typeof about>('turbine-balance-pressure', {}, ({ power, outletPressure, inletTemperature, flowCapacity: capacity, efficiency, specificHeat, heatRatio: gamma }) => {
  const left = (inletPressure: number): number => turbinePower({
    flow: turbineFlow({ inletPressure, inletTemperature, outletPressure, flowCapacity: capacity }), temperature: inletTemperature,
    expansionRatio: expansionRatio({ inlet: inletPressure, outlet: outletPressure }), efficiency, specificHeat, heatRatio: gamma,
  }) - power
  return untraced(() => {
    let ratio = 2
    while (left(outletPressure * ratio) < 0 && ratio < 1e6) ratio *= 2
    return bracketedRoot(left, outletPressure, outletPressure * ratio, 1e-6 * outletPressure).x
  })
})

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { expansionRatio, gasFlow, gasSpecificHeat, heatRatio, turbineEfficiency, turbineInletTemperature, turboPower } from './quantities.ts'

/** Power that a turbine takes from its gas. */
export const about = {
  name: 'Power of the turbine',
  in: { flow: role(gasFlow, 'm_t', 'Flow through the turbine'), temperature: turbineInletTemperature, expansionRatio, efficiency: turbineEfficiency, specificHeat: gasSpecificHeat, heatRatio },
  out: role(turboPower, 'P_t', 'Turbine power'),
  equation: 'flow * specificHeat * temperature * efficiency * (1 - expansionRatio^((1 - heatRatio) / heatRatio))',
  source: ['cohen-gas-turbine', 'section 2.3, isentropic efficiency of a turbine'],
  notes: 'Source states no range. Mean values; the energy of exhaust pulses is left out, so the boost threshold reads late.',
} as const satisfies About

export const turbinePower = formula<typeof about>('turbine-power', {}, ({ flow, temperature, expansionRatio: ratio, efficiency, specificHeat, heatRatio: gamma }) =>
  flow * specificHeat * temperature * efficiency * (1 - ratio ** ((1 - gamma) / gamma)))

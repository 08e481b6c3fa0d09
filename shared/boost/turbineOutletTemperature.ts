import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { expansionRatio, heatRatio, turbineEfficiency, turbineInletTemperature } from './quantities.ts'

/** Temperature of the gas leaving a turbine. */
export const about = {
  name: 'Temperature after the turbine',
  in: { temperature: turbineInletTemperature, expansionRatio, efficiency: turbineEfficiency, heatRatio },
  out: role(turbineInletTemperature, 'T_4', 'Turbine outlet temperature'),
  equation: 'temperature * (1 - efficiency * (1 - expansionRatio^((1 - heatRatio) / heatRatio)))',
  source: ['cohen-gas-turbine', 'section 2.3, isentropic efficiency of a turbine'],
  notes: 'Source states no range. Heat lost by the housing is left out, so the real gas is cooler.',
} as const satisfies About

export const turbineOutletTemperature = formula<typeof about>('turbine-outlet-temperature', {}, ({ temperature, expansionRatio: ratio, efficiency, heatRatio: gamma }) => temperature * (1 - efficiency * (1 - ratio ** ((1 - gamma) / gamma))))

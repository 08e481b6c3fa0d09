import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { correctedFlow, gasFlow, gasPressure, gasTemperature } from './quantities.ts'

/** Mass flow that a corrected flow of a map stands for. */
export const about = {
  name: 'Mass flow from a corrected flow',
  in: { corrected: correctedFlow, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), pressure: role(gasPressure, 'p_1', 'Compressor inlet pressure'), referenceTemperature: role(gasTemperature, 'T_ref', 'Reference temperature of the map'), referencePressure: role(gasPressure, 'p_ref', 'Reference pressure of the map') },
  out: gasFlow,
  equation: 'corrected * sqrt(referenceTemperature / temperature) * pressure / referencePressure',
  source: ['nasa-glenn-corrected-flow', 'm √θ/δ, θ and δ being temperature and pressure over their reference'],
  notes: 'Source states no range. The corrected flow, turned round.',
} as const satisfies About

export const actualFlow = formula<typeof about>('actual-flow', {}, ({ corrected, temperature, pressure, referenceTemperature, referencePressure }) => (corrected * Math.sqrt(referenceTemperature / temperature) * pressure) / referencePressure)

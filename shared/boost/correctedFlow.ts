import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { correctedFlow as corrected } from './quantities.ts'
import { gasFlow, gasPressure, gasTemperature } from './quantities.ts'

/** Mass flow as a compressor map counts it: the flow with the same Mach numbers at the map’s reference temperature and pressure. */
export const about = {
  name: 'Corrected mass flow',
  in: { flow: gasFlow, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), pressure: role(gasPressure, 'p_1', 'Compressor inlet pressure'), referenceTemperature: role(gasTemperature, 'T_ref', 'Reference temperature of the map'), referencePressure: role(gasPressure, 'p_ref', 'Reference pressure of the map') },
  out: corrected,
  equation: 'flow * sqrt(temperature / referenceTemperature) * referencePressure / pressure',
  source: ['nasa-glenn-corrected-flow', 'm √θ/δ, θ and δ being temperature and pressure over their reference'],
  notes: 'Source states no range. Same gas; total temperature and pressure, which at a duct’s low speed are those measured. The reference belongs to each map and is never assumed.',
} as const satisfies About

export const correctedFlow = formula<typeof about>('corrected-flow', {}, ({ flow, temperature, pressure, referenceTemperature, referencePressure }) => (flow * Math.sqrt(temperature / referenceTemperature) * referencePressure) / pressure)

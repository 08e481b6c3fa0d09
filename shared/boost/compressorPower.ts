import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airSpecificHeat } from '../formula/constants.ts'
import { gasFlow, gasTemperature, turboPower } from './quantities.ts'

/** Power that a compressor takes from its shaft. */
export const about = {
  name: 'Power taken by the compressor',
  in: { flow: gasFlow, inletTemperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), outletTemperature: role(gasTemperature, 'T_2', 'Compressor outlet temperature') },
  out: role(turboPower, 'P_c', 'Compressor power'),
  constants: { airSpecificHeat },
  equation: 'flow * airSpecificHeat * (outletTemperature - inletTemperature)',
  source: ['cohen-gas-turbine', 'section 2.3, steady-flow energy equation'],
  notes: 'Source states no range. Heat through the housing is left out, so a compressor that is heated by its turbine reads as less efficient than it is.',
} as const satisfies About

export const compressorPower = formula<typeof about>('compressor-power', {}, ({ flow, inletTemperature, outletTemperature }) => flow * airSpecificHeat.value * (outletTemperature - inletTemperature))

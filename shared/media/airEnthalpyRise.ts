import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airSpecificHeat } from '../formula/constants.ts'
import { airFlow } from '../engine/quantities.ts'
import { gasTemperature } from '../boost/quantities.ts'
import { enthalpyFlow } from './quantities.ts'

/** Heat, or shaft power, that a flow of air takes up between two temperatures. */
export const about = {
  name: 'Enthalpy rise of an air flow',
  in: { flow: airFlow, from: role(gasTemperature, 'T_1', 'Temperature before'), to: role(gasTemperature, 'T_2', 'Temperature after') },
  out: enthalpyFlow,
  equation: 'flow * airSpecificHeat * (to - from)',
  constants: { airSpecificHeat },
  source: ['cohen-rogers', 'section 2.2, cold-air specific heat'],
  notes: 'Source states no range. Constant specific heat: within 0.5 % from 0 to 100 °C, 1.5 % low at 200 °C. Negative where the air is cooled.',
} as const satisfies About

export const airEnthalpyRise = formula<typeof about>('air-enthalpy-rise', {}, ({ flow, from, to }) => flow * airSpecificHeat.value * (to - from))

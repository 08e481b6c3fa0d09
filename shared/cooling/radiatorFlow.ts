import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantFlowOf, thermostatOpening } from './quantities.ts'


/** Coolant that passes the radiator. */
export const about = {
  name: 'Coolant flow through the radiator',
  in: { pump: role(coolantFlowOf, 'V_p', 'Flow of the pump'), opening: thermostatOpening },
  out: coolantFlowOf,
  equation: 'pump * opening',
  source: ['definition', 'share of the pump’s flow'],
} as const satisfies About

export const radiatorFlow = formula<typeof about>('radiator-flow', {}, ({ pump, opening }) => pump * opening)

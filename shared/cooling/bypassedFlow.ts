import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantFlowOf } from './quantities.ts'

/** What the thermostat leads past the radiator. */
export const about = {
  name: 'Flow past the radiator',
  in: { pump: role(coolantFlowOf, 'V_p', 'Flow of the pump'), radiator: role(coolantFlowOf, 'V_r', 'Through the radiator') },
  out: role(coolantFlowOf, 'V_b', 'Past the radiator'),
  equation: 'pump - radiator',
  source: ['definition', 'what is not led one way goes the other'],
  sample: { pump: [0.004, 0.008], radiator: [0.0001, 0.0035] },
} as const satisfies About

export const bypassedFlow = formula<typeof about>('bypassed-flow', {}, ({ pump, radiator }) => pump - radiator)

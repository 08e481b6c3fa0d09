import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { circuitDrop, coolantFlowOf, pumpRise } from './quantities.ts'

/** What the pump adds at the flow that the circuit lets through. */
export const about = {
  name: 'Rise of the pump at that flow',
  in: { drop: circuitDrop, dropFlow: role(coolantFlowOf, 'V_d', 'Flow at which the circuit loses that'), flow: coolantFlowOf },
  out: pumpRise,
  equation: 'drop * (flow / dropFlow)^2',
  source: ['white-fluid', 'turbulent loss goes with the square of flow'],
} as const satisfies About

export const circuitRise = formula<typeof about>('circuit-rise', {}, ({ drop, dropFlow, flow }) => drop * (flow / dropFlow) ** 2)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { flowCapacity, turboCount } from './quantities.ts'

/** Flow capacity of several equal turbines side by side. */
export const about = {
  name: 'Flow capacity of all turbines',
  in: { each: role(flowCapacity, 'm_T1', 'Flow capacity of one turbine'), turbos: turboCount },
  out: role(flowCapacity, 'm_T', 'Flow capacity of all turbines'),
  equation: 'each * turbos',
  source: ['derived', 'equal machines in parallel stand between the same pressures'],
} as const satisfies About

export const capacityOfAll = formula<typeof about>('capacity-of-all', {}, ({ each, turbos }) => each * turbos)

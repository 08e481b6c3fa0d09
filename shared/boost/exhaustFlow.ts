import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow } from './quantities.ts'

/** Exhaust flow of an engine: all the air and all the fuel. */
export const about = {
  name: 'Exhaust flow',
  in: { airFlow: role(gasFlow, 'm_a', 'Air flow'), fuelFlow: role(gasFlow, 'm_f', 'Fuel flow') },
  out: role(gasFlow, 'm_x', 'Exhaust flow'),
  equation: 'airFlow + fuelFlow',
  source: ['derived', 'conservation of mass through the engine'],
} as const satisfies About

export const exhaustFlow = formula<typeof about>('exhaust-flow', {}, ({ airFlow, fuelFlow }) => airFlow + fuelFlow)

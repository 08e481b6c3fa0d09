import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { correctedFlow, flowMargin } from './quantities.ts'

/** How far left of the map’s right edge a point lies: flow there over flow, same pressure ratio, less one. */
export const about = {
  name: 'Choke margin',
  in: { flow: correctedFlow, chokeFlow: role(correctedFlow, 'm_k', 'Flow at the right edge of the map, same pressure ratio') },
  out: role(flowMargin, 'S_k', 'Choke margin'),
  equation: '(chokeFlow - flow) / flow',
  source: ['definition', 'flow margin at constant pressure ratio'],
  notes: 'The right edge is the choke line, and above its end the top speed line.',
} as const satisfies About

export const chokeMargin = formula<typeof about>('choke-margin', {}, ({ flow, chokeFlow }) => (chokeFlow - flow) / flow)

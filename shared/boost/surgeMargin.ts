import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { correctedFlow, flowMargin } from './quantities.ts'

/** How far right of surge a point lies: flow over flow at surge, same pressure ratio, less one. */
export const about = {
  name: 'Surge margin',
  in: { flow: correctedFlow, surgeFlow: role(correctedFlow, 'm_s', 'Flow at surge, same pressure ratio') },
  out: role(flowMargin, 'S_s', 'Surge margin'),
  equation: '(flow - surgeFlow) / surgeFlow',
  source: ['definition', 'flow margin at constant pressure ratio'],
  notes: 'Margins are also quoted at constant speed, and over the point’s own flow: compare like with like.',
} as const satisfies About

export const surgeMargin = formula<typeof about>('surge-margin', {}, ({ flow, surgeFlow }) => (flow - surgeFlow) / surgeFlow)

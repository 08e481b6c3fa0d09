import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilFlow } from './quantities.ts'

/** The smaller of two flows. */
export const about = {
  name: 'The smaller of two flows',
  in: { one: role(oilFlow, 'Q_l', 'Laminar'), other: role(oilFlow, 'Q_t', 'Turbulent') },
  out: oilFlow,
  equation: 'min(one, other)',
  source: ['derived', 'of laminar and turbulent friction the larger loss holds'],
} as const satisfies About

export const smallerFlow = formula<typeof about>('smaller-flow', {}, ({ one, other }) => Math.min(one, other))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { heatFlow } from './quantities.ts'

/** Two heats side by side. */
export const about = {
  name: 'Sum of two heats',
  in: { one: role(heatFlow, 'Q_1', 'One heat'), other: role(heatFlow, 'Q_2', 'Other heat') },
  out: heatFlow,
  equation: 'one + other',
  source: ['derived', 'paths in parallel add'],
} as const satisfies About

export const heatSum = formula<typeof about>('heat-sum', {}, ({ one, other }) => one + other)

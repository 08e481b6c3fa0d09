import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow, turboCount } from './quantities.ts'

/** Share of a flow that each of several equal turbochargers side by side takes. */
export const about = {
  name: 'Flow of one turbocharger',
  in: { flow: role(gasFlow, 'm', 'Flow of all turbochargers'), turbos: turboCount },
  out: role(gasFlow, 'm_1', 'Flow of one turbocharger'),
  equation: 'flow / turbos',
  source: ['derived', 'equal machines in parallel share a flow alike'],
} as const satisfies About

export const flowOfOne = formula<typeof about>('flow-of-one', {}, ({ flow, turbos }) => flow / turbos)

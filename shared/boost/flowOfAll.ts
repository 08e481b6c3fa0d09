import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow, turboCount } from './quantities.ts'

/** Flow of several equal turbochargers side by side. */
export const about = {
  name: 'Flow of all turbochargers',
  in: { flow: role(gasFlow, 'm_1', 'Flow of one turbocharger'), turbos: turboCount },
  out: role(gasFlow, 'm', 'Flow of all turbochargers'),
  equation: 'flow * turbos',
  source: ['derived', 'flows in parallel add'],
} as const satisfies About

export const flowOfAll = formula<typeof about>('flow-of-all', {}, ({ flow, turbos }) => flow * turbos)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilFlow } from './quantities.ts'

/** Oil that the engine takes: what its gaps and what its holes pass. */
export const about = {
  name: 'Oil that the engine takes',
  in: { gaps: role(oilFlow, 'Q_g', 'Through gaps'), holes: role(oilFlow, 'Q_h', 'Through jets and restrictor') },
  out: oilFlow,
  equation: 'gaps + holes',
  source: ['derived', 'flows in parallel add'],
} as const satisfies About

export const supplyFlow = formula<typeof about>('supply-flow', {}, ({ gaps, holes }) => gaps + holes)

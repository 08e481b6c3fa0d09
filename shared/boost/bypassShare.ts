import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bypassShare as share } from './quantities.ts'
import { gasFlow } from './quantities.ts'

/** Share of the exhaust that goes past the turbine. */
export const about = {
  name: 'Share of exhaust past the turbine',
  in: { wastegateFlow: role(gasFlow, 'm_w', 'Flow through the wastegate'), exhaustFlow: role(gasFlow, 'm_x', 'Exhaust flow') },
  out: share,
  equation: 'wastegateFlow / exhaustFlow',
  source: ['definition', 'flow past the turbine over exhaust flow'],
} as const satisfies About

export const bypassShare = formula<typeof about>('bypass-share', {}, ({ wastegateFlow, exhaustFlow }) => wastegateFlow / exhaustFlow)

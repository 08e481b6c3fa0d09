import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow } from './quantities.ts'

/** Exhaust that the wastegate has to pass. */
export const about = {
  name: 'Flow past the turbine',
  in: { exhaustFlow: role(gasFlow, 'm_x', 'Exhaust flow'), turbineFlow: role(gasFlow, 'm_t', 'Flow through the turbine') },
  out: role(gasFlow, 'm_w', 'Flow through the wastegate'),
  equation: 'exhaustFlow - turbineFlow',
  source: ['derived', 'conservation of mass in the exhaust manifold'],
} as const satisfies About

export const bypassFlow = formula<typeof about>('bypass-flow', {}, ({ exhaustFlow, turbineFlow }) => exhaustFlow - turbineFlow)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { injectorFlow, nozzleDrop } from './quantities.ts'

/** Flow of an injector at a pressure across the nozzle other than its rated one, same fluid. */
export const about = {
  name: 'Injector flow at another pressure',
  in: { ratedFlow: role(injectorFlow, 'Q_0', 'Rated flow'), drop: nozzleDrop, ratedDrop: role(nozzleDrop, 'Δp_0', 'Rated pressure') },
  out: injectorFlow,
  equation: 'ratedFlow * sqrt(drop / ratedDrop)',
  source: ['sae-j1832', 'flow scales with the square root of pressure'],
  notes: 'Source states no range. Bernoulli through a fixed orifice; the needle’s lift is taken as full.',
} as const satisfies About

export const injectorFlowAt = formula<typeof about>('injector-flow-at', {}, ({ ratedFlow, drop, ratedDrop }) => ratedFlow * Math.sqrt(drop / ratedDrop))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantFlowOf, metalConductanceOf, stillShareOf } from './quantities.ts'

/** Conductance from metal to coolant at another flow; natural circulation is left when the pump stands. */
export const about = {
  name: 'Conductance from metal to coolant at a flow',
  in: { rated: role(metalConductanceOf, 'G_0', 'At the stated flow'), flow: role(coolantFlowOf, 'V_p', 'Flow of the pump'), ratedFlow: role(coolantFlowOf, 'V_c0', 'Stated flow'), still: stillShareOf },
  out: metalConductanceOf,
  equation: 'rated * max(still, (flow / ratedFlow)^0.8)',
  source: ['incropera', 'chapter 8: turbulent flow in channels rises with the 0.8 power of flow; the share without flow is common practice, no source'],
  notes: 'Boiling at the wall, which carries far more, is left out: near boiling the metal is cooler than this says.',
} as const satisfies About

export const metalConductanceAt = formula<typeof about>('metal-conductance-at', {}, ({ rated, flow, ratedFlow, still }) => rated * Math.max(still, (flow / ratedFlow) ** 0.8))

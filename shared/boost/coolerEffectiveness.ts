import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { effectiveness, gasFlow } from './quantities.ts'

/** Effectiveness of a charge cooler at another charge flow than the rated one. */
export const about = {
  name: 'Charge cooler effectiveness at another flow',
  in: { flow: gasFlow, ratedFlow: role(gasFlow, 'm_0', 'Charge flow at which the cooler is rated'), ratedEffectiveness: role(effectiveness, 'ε_0', 'Rated effectiveness') },
  out: effectiveness,
  equation: '1 - (1 - ratedEffectiveness)^((flow / ratedFlow)^(-0.4))',
  source: ['derived', 'ε = 1 - exp(-NTU) with NTU = UA/(m c_p); UA goes with m^0.6, so NTU with m^-0.4'],
  notes: 'Source states no range. The cooling stream is taken as much larger than the charge, so its own warming is left out; 0.6 is the exponent of a film between laminar and turbulent with some resistance on the other side (0.8 would be turbulent alone): common practice, no source.',
} as const satisfies About

export const coolerEffectiveness = formula<typeof about>('cooler-effectiveness', {}, ({ flow, ratedFlow, ratedEffectiveness }) => 1 - (1 - ratedEffectiveness) ** ((flow / ratedFlow) ** -0.4))

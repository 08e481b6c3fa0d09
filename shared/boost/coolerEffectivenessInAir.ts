import { formula, type About } from '../formula/formula.ts'
import { effectivenessCrossUnmixed } from '../cooling/effectivenessCrossUnmixed.ts'
import { transferUnitsOf } from '../cooling/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { coolingAir, effectiveness, gasFlow } from './quantities.ts'

/** Effectiveness of a charge cooler at another charge flow and another flow of cooling air than the rated ones. */
export const about = {
  name: 'Charge cooler effectiveness in its cooling air',
  in: {
    units: role(transferUnitsOf, 'N_0', 'Transfer units at the rating'), flow: gasFlow, ratedFlow: role(gasFlow, 'm_0', 'Charge flow of the rating'), air: coolingAir, ratedAir: role(coolingAir, 'm_k0', 'Cooling air of the rating'),
  },
  out: effectiveness,
  steps: [
    'Three quarters of the resistance lie on the charge’s side, one on the air’s; each falls with the 0.8th power of its flow: N = N_0 (m_0/m) / (0.75 (m_0/m)^0.8 + 0.25 (m_k0/m_k)^0.8).',
    'Cross flow with both streams unmixed gives what the weaker stream reaches of the stronger; where the cooling air is the weaker, times cooling air over charge.',
  ],
  source: ['kays-london', 'chapter 2; the split of the resistance is common practice, no source'],
  notes: 'The split makes effectiveness over charge flow alone fall as the form without cooling air does near the rating. Both streams are air of the same specific heat.',
} as const satisfies About

export const coolerEffectivenessInAir = formula<typeof about>('cooler-effectiveness-in-air', {}, ({ units, flow, ratedFlow, air, ratedAir }) => {
  const own = (units * (ratedFlow / flow)) / (0.75 * (ratedFlow / flow) ** 0.8 + 0.25 * (ratedAir / air) ** 0.8)
  return flow <= air ? effectivenessCrossUnmixed({ units: own, ratio: flow / air }) : (effectivenessCrossUnmixed({ units: (own * flow) / air, ratio: air / flow }) * air) / flow
})

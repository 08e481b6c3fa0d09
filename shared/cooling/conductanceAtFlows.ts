import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airSideShare, coolantFlowOf, coolerConductance, coreAir, flowExponent } from './quantities.ts'


/** A rated conductance carried to other flows: each side’s resistance changes with a power of its own flow. */
export const about = {
  name: 'Conductance of a cooler at other flows',
  in: { rated: role(coolerConductance, 'UA_0', 'Rated conductance'), airShare: airSideShare, air: coreAir, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), airExponent: role(flowExponent, 'm_a', 'Air-side exponent'), coolant: coolantFlowOf, ratedCoolant: role(coolantFlowOf, 'V_c0', 'Rated coolant flow'), coolantExponent: role(flowExponent, 'm_c', 'Coolant-side exponent') },
  out: coolerConductance,
  equation: 'rated / (airShare * (ratedAir / air)^airExponent + (1 - airShare) * (ratedCoolant / coolant)^coolantExponent)',
  source: ['derived', 'resistances in series, wall and fouling left out; each film as a power of its flow'],
  notes: 'Below a Reynolds number near 2,300 in its tubes the coolant’s side no longer follows a power: leave a margin at idle.',
} as const satisfies About

export const conductanceAtFlows = formula<typeof about>('conductance-at-flows', {}, ({ rated, airShare, air, ratedAir, airExponent, coolant, ratedCoolant, coolantExponent }) =>
  rated / (airShare * (ratedAir / air) ** airExponent + (1 - airShare) * (ratedCoolant / coolant) ** coolantExponent))

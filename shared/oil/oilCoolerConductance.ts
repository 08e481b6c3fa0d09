import { airSideShare, coolerConductance, coreAir, flowExponent } from '../cooling/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilFlow } from './quantities.ts'

/** Conductance of an oil cooler away from its rated flows. */
export const about = {
  name: 'Conductance of the oil cooler',
  in: {
    rated: role(coolerConductance, 'UA_0', 'Rated conductance'), airShare: airSideShare, air: coreAir, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), airExponent: role(flowExponent, 'm_a', 'Air-side exponent'),
    oil: oilFlow, ratedOil: role(oilFlow, 'Q_o0', 'Rated oil flow'), oilExponent: role(flowExponent, 'm_o', 'Oil-side exponent'),
  },
  out: coolerConductance,
  equation: 'rated / (airShare * (ratedAir / air)^airExponent + (1 - airShare) * (ratedOil / oil)^oilExponent)',
  sample: { oil: [1e-4, 2e-3], ratedOil: [1e-4, 2e-3] },
  source: ['derived', 'resistances in series; each film as a power of its own flow'],
  notes: 'Oil viscosity is taken as at the rated point.',
} as const satisfies About

export const oilCoolerConductance = formula<typeof about>('oil-cooler-conductance', {}, ({ rated, airShare, air, ratedAir, airExponent, oil, ratedOil, oilExponent }) =>
  rated / (airShare * (ratedAir / air) ** airExponent + (1 - airShare) * (ratedOil / oil) ** oilExponent))

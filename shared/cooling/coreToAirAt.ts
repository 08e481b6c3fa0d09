import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, chargeCoolerConductance, coreAir, flowExponent } from './quantities.ts'

/** Conductance from a charge cooler's core to the air at another air flow, never more than that air can carry. */
export const about = {
  name: 'Conductance from core to air at a flow',
  in: { rated: role(chargeCoolerConductance, 'K_x0', 'At the rated air flow'), air: coreAir, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), exponent: role(flowExponent, 'm_a', 'Air-side exponent'), rate: role(capacityRateOf, 'C_a', 'Capacity rate of the air') },
  out: chargeCoolerConductance,
  equation: 'min(rate, rated * (air / ratedAir)^exponent)',
  source: ['derived', 'a film as a power of its flow; air cannot leave warmer than the core'],
} as const satisfies About

export const coreToAirAt = formula<typeof about>('core-to-air-at', {}, ({ rated, air, ratedAir, exponent, rate }) => Math.min(rate, rated * (air / ratedAir) ** exponent))

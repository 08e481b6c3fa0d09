import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { mechanicalEfficiency, turboPower } from './quantities.ts'

/** Power that reaches the compressor. */
export const about = {
  name: 'Power delivered to the compressor',
  in: { turbine: role(turboPower, 'P_t', 'Turbine power'), mechanicalEfficiency },
  out: role(turboPower, 'P_d', 'Power delivered to the compressor'),
  equation: 'turbine * mechanicalEfficiency',
  source: ['heywood-ice', 'section 6.8, turbocharger power balance'],
  notes: 'Source states no range. What is lost warms the oil.',
} as const satisfies About

export const shaftPowerBalance = formula<typeof about>('shaft-power-balance', {}, ({ turbine, mechanicalEfficiency: share }) => turbine * share)

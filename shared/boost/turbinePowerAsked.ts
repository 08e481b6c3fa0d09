import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { mechanicalEfficiency, turboPower } from './quantities.ts'

/** Power that the turbine must give so that the compressor gets what it needs. */
export const about = {
  name: 'Power asked of the turbine',
  in: { compressor: role(turboPower, 'P_c', 'Compressor power'), mechanicalEfficiency },
  out: role(turboPower, 'P_t', 'Turbine power'),
  equation: 'compressor / mechanicalEfficiency',
  source: ['heywood-ice', 'section 6.8, turbocharger power balance'],
} as const satisfies About

export const turbinePowerAsked = formula<typeof about>('turbine-power-asked', {}, ({ compressor, mechanicalEfficiency: share }) => compressor / share)

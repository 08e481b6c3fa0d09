import { formula, type About } from '../formula/formula.ts'
import { exhaustEnthalpyOf } from '../media/quantities.ts'
import { heatFlow, massFlowOf } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Enthalpy of each kilogram of exhaust above 298.15 K, from the heat it carries and its flow. */
export const about = {
  name: 'Enthalpy of the exhaust',
  in: { heat: role(heatFlow, 'Q_x', 'Heat in the exhaust'), flow: massFlowOf },
  out: exhaustEnthalpyOf,
  equation: 'heat / flow',
  source: ['definition', 'heat per mass'],
} as const satisfies About

export const specificEnthalpyOf = formula<typeof about>('specific-enthalpy-of', {}, ({ heat, flow }) => heat / flow)

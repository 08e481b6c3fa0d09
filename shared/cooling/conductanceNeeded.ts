import { formula, type About } from '../formula/formula.ts'
import { coolerConductance, heatFlow, meanDifferenceOf } from './quantities.ts'

/** Conductance that a cooler needs for a heat at a mean difference. */
export const about = {
  name: 'Conductance a cooler needs',
  in: { heat: heatFlow, difference: meanDifferenceOf },
  out: coolerConductance,
  equation: 'heat / difference',
  source: ['incropera', 'equation 11.14, solved for the conductance'],
} as const satisfies About

export const conductanceNeeded = formula<typeof about>('conductance-needed', {}, ({ heat, difference }) => heat / difference)

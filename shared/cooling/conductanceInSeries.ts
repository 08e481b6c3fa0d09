import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolerConductance } from './quantities.ts'

/** Two sides of a cooler, one behind the other. */
export const about = {
  name: 'Conductance of two sides in series',
  in: { air: role(coolerConductance, 'UA_a', 'Conductance of the air’s side'), coolant: role(coolerConductance, 'UA_c', 'Conductance of the coolant’s side') },
  out: coolerConductance,
  equation: '1 / (1 / air + 1 / coolant)',
  source: ['kays-london', 'resistances in series; wall and fouling left out'],
} as const satisfies About

export const conductanceInSeries = formula<typeof about>('conductance-in-series', {}, ({ air, coolant }) => 1 / (1 / air + 1 / coolant))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, coolerConductance, transferUnitsOf } from './quantities.ts'


/** Size of a cooler against the weaker stream. */
export const about = {
  name: 'Number of transfer units',
  in: { conductance: coolerConductance, one: role(capacityRateOf, 'C_1', 'Capacity rate of one stream'), other: role(capacityRateOf, 'C_2', 'Capacity rate of the other stream') },
  out: transferUnitsOf,
  equation: 'conductance / min(one, other)',
  source: ['definition', 'conductance over smaller capacity rate'],
} as const satisfies About

export const transferUnits = formula<typeof about>('transfer-units', {}, ({ conductance, one, other }) => conductance / Math.min(one, other))

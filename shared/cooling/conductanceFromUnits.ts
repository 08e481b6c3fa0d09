import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, coolerConductance, transferUnitsOf } from './quantities.ts'


/** Conductance of a cooler from its number of transfer units. */
export const about = {
  name: 'Conductance from transfer units',
  in: { units: transferUnitsOf, one: role(capacityRateOf, 'C_1', 'Capacity rate of one stream'), other: role(capacityRateOf, 'C_2', 'Capacity rate of the other stream') },
  out: coolerConductance,
  equation: 'units * min(one, other)',
  source: ['definition', 'conductance over smaller capacity rate'],
} as const satisfies About

export const conductanceFromUnits = formula<typeof about>('conductance-from-units', {}, ({ units, one, other }) => units * Math.min(one, other))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, coolantDensityOf, coolantFlowOf, coolantHeatCapacity } from './quantities.ts'


/** Heat that warms the stream of coolant by one kelvin. */
export const about = {
  name: 'Capacity rate of the coolant',
  in: { flow: coolantFlowOf, density: coolantDensityOf, specificHeat: coolantHeatCapacity },
  out: role(capacityRateOf, 'C_c', 'Capacity rate of the coolant'),
  equation: 'flow * density * specificHeat',
  source: ['definition', 'mass flow times specific heat'],
} as const satisfies About

export const coolantCapacityRate = formula<typeof about>('coolant-capacity-rate', {}, ({ flow, density, specificHeat }) => flow * density * specificHeat)

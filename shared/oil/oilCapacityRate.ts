import { capacityRateOf } from '../cooling/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDensity, oilFlow, oilSpecificHeat } from './quantities.ts'

/** Heat that warms the stream of oil by one kelvin. */
export const about = {
  name: 'Capacity rate of the oil',
  in: { flow: oilFlow, density: oilDensity, specificHeat: oilSpecificHeat },
  out: role(capacityRateOf, 'C_o', 'Capacity rate of the oil'),
  equation: 'flow * density * specificHeat',
  source: ['definition', 'mass flow times specific heat'],
} as const satisfies About

export const oilCapacityRate = formula<typeof about>('oil-capacity-rate', {}, ({ flow, density, specificHeat }) => flow * density * specificHeat)

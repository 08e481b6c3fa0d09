import { formula, type About } from '../formula/formula.ts'
import { airSpecificHeat } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, coreAir } from './quantities.ts'

/** Heat that warms the stream of cooling air by one kelvin. */
export const about = {
  name: 'Capacity rate of the cooling air',
  in: { air: coreAir },
  out: role(capacityRateOf, 'C_a', 'Capacity rate of the air'),
  equation: 'air * airSpecificHeat',
  constants: { airSpecificHeat },
  source: ['definition', 'mass flow times specific heat'],
  notes: 'Specific heat held constant: within 0.5 % from 0 to 100 °C.',
} as const satisfies About

export const airCapacityRate = formula<typeof about>('air-capacity-rate', {}, ({ air }) => air * airSpecificHeat.value)

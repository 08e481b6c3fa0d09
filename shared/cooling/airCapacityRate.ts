import { formula, type About } from '../formula/formula.ts'
import { type Constant } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, coreAir } from './quantities.ts'

const airSpecificHeat: Constant = { name: 'specific heat of air', symbol: 'c_pa', value: 1007, unit: 'J/(kg K)', source: 'Incropera and others, 6th edition, table A.4: dry air from 250 to 350 K' }

/** Heat that warms the stream of cooling air by one kelvin. */
export const about = {
  name: 'Capacity rate of the cooling air',
  in: { air: coreAir },
  out: role(capacityRateOf, 'C_a', 'Capacity rate of the air'),
  equation: 'air * airSpecificHeat',
  constants: { airSpecificHeat },
  source: ['definition', 'mass flow times specific heat'],
  notes: 'Specific heat held at 1007 J/(kg K): within 0.3 % from -20 to 80 °C.',
} as const satisfies About

export const airCapacityRate = formula<typeof about>('air-capacity-rate', {}, ({ air }) => air * airSpecificHeat.value)

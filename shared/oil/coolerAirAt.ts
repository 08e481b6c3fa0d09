import { coreAir } from '../cooling/quantities.ts'
import { airPressure } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { standardPressure } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'

/** Air through a cooler where the air is thinner than at sea level: the same speed carries less mass. */
export const about = {
  name: 'Air through the oil cooler at this height',
  in: { air: role(coreAir, 'm_c0', 'Air through the oil cooler at sea level'), outside: airPressure },
  out: coreAir,
  equation: 'air * outside / standardPressure',
  constants: { standardPressure },
  source: ['derived', 'perfect gas at one air speed and temperature'],
} as const satisfies About

export const coolerAirAt = formula<typeof about>('cooler-air-at', {}, ({ air, outside }) => (air * outside) / standardPressure.value)

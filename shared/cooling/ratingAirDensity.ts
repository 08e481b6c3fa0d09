import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, standardPressure } from '../formula/constants.ts'
import { airDensity } from '../media/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { coreAirTemperatureOf } from './quantities.ts'

/** Density of the air at a rating, which is taken at sea level. */
export const about = {
  name: 'Density of air at a rating',
  in: { temperature: role(coreAirTemperatureOf, 'T_a0', 'Air inlet of the rating') },
  out: role(airDensity, 'ρ_0', 'Density at the rating'),
  equation: 'standardPressure / (airGasConstant * temperature)',
  constants: { standardPressure, airGasConstant },
  source: ['derived', 'perfect gas at standard pressure'],
} as const satisfies About

export const ratingAirDensity = formula<typeof about>('rating-air-density', {}, ({ temperature }) => standardPressure.value / (airGasConstant.value * temperature))

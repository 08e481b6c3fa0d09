import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantTemperatureOf, coreAirTemperatureOf, inletDifferenceOf } from './quantities.ts'


/** What drives the heat: the hot stream less the cold one, both where they enter. */
export const about = {
  name: 'Difference between the two inlets',
  in: { hot: role(coolantTemperatureOf, 'T_hi', 'Hot stream at its inlet'), cold: role(coreAirTemperatureOf, 'T_ci', 'Cold stream at its inlet') },
  out: inletDifferenceOf,
  equation: 'hot - cold',
  source: ['definition', 'difference of two temperatures'],
} as const satisfies About

export const inletDifference = formula<typeof about>('inlet-difference', {}, ({ hot, cold }) => hot - cold)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilPressure } from './quantities.ts'

/** Oil pressure of the model, brought to one hot reading: the shape over speed is the model's, the level is the gauge's. */
export const about = {
  name: 'Oil pressure by a hot reading',
  in: { here: role(oilPressure, 'p_n', 'Model at this speed'), reading: role(oilPressure, 'p_h', 'Hot reading'), there: role(oilPressure, 'p_t', 'Model at the speed of the reading') },
  out: oilPressure,
  equation: 'here * reading / there',
  sample: { there: [1e5, 12e5] },
  source: ['derived', 'one factor for all speeds'],
} as const satisfies About

export const pressureByReading = formula<typeof about>('pressure-by-reading', {}, ({ here, reading, there }) => (here * reading) / there)

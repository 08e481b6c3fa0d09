import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { exhaustPressure, manifoldPressure, meanPressure } from './quantities.ts'

/** Work of changing the gas, as a mean pressure. Positive is lost: exhaust stands above the manifold. */
export const about = {
  name: 'Pumping mean pressure',
  in: { exhaustPressure, manifoldPressure },
  out: role(meanPressure, 'p_mp', 'Pumping mean pressure'),
  equation: 'exhaustPressure - manifoldPressure',
  source: ['heywood-1988', 'section 5.3, ideal gas exchange: pumping mean pressure is the difference of exhaust and intake pressure'],
  notes: 'Source states no range. Positive: work lost. Negative, where boost exceeds back-pressure: work gained. Flow losses of the ports themselves are in the friction line.',
} as const satisfies About

export const pumpingMeanPressure = formula<typeof about>('pumping-mean-pressure', {}, ({ exhaustPressure: exhaust, manifoldPressure: manifold }) => exhaust - manifold)

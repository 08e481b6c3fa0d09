import { formula, type About } from '../formula/formula.ts'
import { heatRatio } from '../boost/quantities.ts'
import { chargeTemperature, compressionRatio, endPressure, endTemperature, manifoldPressure } from './quantities.ts'

/** Pressure and temperature that compression alone would give. No knock limit, no peak pressure: neither spark nor burning is in it. */
export const about = {
  name: 'End of compression',
  in: { pressure: manifoldPressure, temperature: chargeTemperature, compressionRatio, ratioOfSpecificHeats: heatRatio },
  out: { pressure: endPressure, temperature: endTemperature },
  equation: { pressure: 'pressure * compressionRatio^ratioOfSpecificHeats', temperature: 'temperature * compressionRatio^(ratioOfSpecificHeats - 1)' },
  source: ['heywood-1988', 'section 5.4, compression along p V^n constant'],
  notes: 'Source states no range. The ratio of specific heats may be the exponent of a real compression, which leakage and cold walls lower to about 1.3. The whole ratio is taken from manifold state: late port closing, hot gas left over and fuel that boils are left out.',
} as const satisfies About

export const endOfCompression = formula<typeof about>('end-of-compression', {}, ({ pressure, temperature, compressionRatio: ratio, ratioOfSpecificHeats }) => ({
  pressure: pressure * ratio ** ratioOfSpecificHeats, temperature: temperature * ratio ** (ratioOfSpecificHeats - 1),
}))

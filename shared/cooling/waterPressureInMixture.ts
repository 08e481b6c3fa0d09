import { formula, type About } from '../formula/formula.ts'
import { systemPressure, waterMole, waterPressure } from './quantities.ts'

/** Saturation pressure that the water in a mixture must reach before the mixture boils under a given pressure. */
export const about = {
  name: 'Pressure the water in coolant must reach to boil',
  in: { pressure: systemPressure, water: waterMole },
  out: waterPressure,
  equation: 'pressure / water',
  source: ['raoult', 'ideal solution, glycol taken as giving no vapour'],
  notes: 'Meets the boiling points ASHRAE prints for 10 to 60 % within about 1 K. Source states no range.',
} as const satisfies About

export const waterPressureInMixture = formula<typeof about>('water-pressure-in-mixture', {}, ({ pressure, water }) => pressure / water)

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { linePressureLoss, railPressure } from './quantities.ts'

/** Largest difference of pressure between two injectors of an engine. */
export const about = {
  name: 'Widest difference between injectors',
  in: {
    firstPrimary: role(railPressure, 'p_1a', 'Pressure at the first primary'), lastPrimary: role(railPressure, 'p_1z', 'Pressure at the last primary'),
    firstSecondary: role(railPressure, 'p_2a', 'Pressure at the first secondary'), lastSecondary: role(railPressure, 'p_2z', 'Pressure at the last secondary'),
  },
  out: role(linePressureLoss, 'Δp_w', 'Widest difference between injectors'),
  equation: 'max(firstPrimary, lastPrimary, firstSecondary, lastSecondary) - min(firstPrimary, lastPrimary, firstSecondary, lastSecondary)',
  source: ['definition', 'highest less lowest'],
  // Apart: of like pressures a difference keeps no digits to compare.
  sample: { firstPrimary: [4e5, 5e5], lastPrimary: [3e5, 3.9e5] },
} as const satisfies About

export const widestGap = formula<typeof about>('widest-gap', {}, (x) => {
  const all = [x.firstPrimary, x.lastPrimary, x.firstSecondary, x.lastSecondary]
  return Math.max(...all) - Math.min(...all)
})

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilPressure } from './quantities.ts'

/** Oil pressure with a relief valve that opens at its setting. */
export const about = {
  name: 'Oil pressure with relief',
  in: { pressure: role(oilPressure, 'p_u', 'Pressure without relief'), setting: role(oilPressure, 'p_s', 'Relief setting') },
  out: oilPressure,
  equation: 'min(pressure, setting)',
  sample: { pressure: [1e4, 20e5], setting: [1e5, 12e5] },
  source: ['derived', 'an ideal relief valve'],
  notes: 'A real valve lets pressure rise a little above its setting.',
} as const satisfies About

export const relievedPressure = formula<typeof about>('relieved-pressure', {}, ({ pressure, setting }) => Math.min(pressure, setting))

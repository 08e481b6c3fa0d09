import { formula, type About } from '../formula/formula.ts'
import { humidity } from '../engine/quantities.ts'
import { saturation, vapourPressureOfWater } from './quantities.ts'

/** What water vapour contributes to the pressure of the air. */
export const about = {
  name: 'Vapour pressure from relative humidity',
  in: { humidity, saturation },
  out: vapourPressureOfWater,
  equation: 'humidity * saturation',
  source: ['definition', 'relative humidity'],
  notes: 'Source states no range.',
} as const satisfies About

export const vapourPressure = formula<typeof about>('vapour-pressure', {}, ({ humidity: share, saturation: most }) => share * most)

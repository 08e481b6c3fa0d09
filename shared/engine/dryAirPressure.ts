import { formula, type About } from '../formula/formula.ts'
import { gasPressure } from '../boost/quantities.ts'
import { dryPressure, vapourShareOfAir } from '../media/quantities.ts'

/** Pressure of the dry part of moist air: the part that brings oxygen. */
export const about = {
  name: 'Pressure of the dry part of the air',
  in: { pressure: gasPressure, share: vapourShareOfAir },
  out: dryPressure,
  equation: 'pressure * (1 - share)',
  source: ['derived', 'Dalton’s law of an ideal mixture'],
  notes: 'The share of water vapour stays the same while air is throttled, compressed or cooled, as long as nothing condenses.',
} as const satisfies About

export const dryAirPressure = formula<typeof about>('dry-air-pressure', {}, ({ pressure, share }) => pressure * (1 - share))

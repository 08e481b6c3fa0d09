import { carSpeedOf } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { distanceFuel, fuelVolumeFlow } from './quantities.ts'

/** Fuel used over a distance. */
export const about = {
  name: 'Fuel over distance',
  in: { flow: fuelVolumeFlow, speed: carSpeedOf },
  out: distanceFuel,
  equation: 'flow / speed',
  sample: { speed: [1, 90] },
  source: ['definition', 'flow over speed'],
} as const satisfies About

export const fuelOverDistance = formula<typeof about>('fuel-over-distance', {}, ({ flow, speed }) => flow / speed)

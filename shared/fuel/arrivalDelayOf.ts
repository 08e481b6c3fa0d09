import { formula, type About } from '../formula/formula.ts'
import { ductLength } from '../engine/quantities.ts'
import { airSpeedInDuct, arrivalDelay } from './quantities.ts'

/** Time that the air takes from an injector to the port: the least that its fuel is late. */
export const about = {
  name: 'Time until fuel arrives',
  in: { distance: ductLength, speed: airSpeedInDuct },
  out: arrivalDelay,
  equation: 'distance / speed',
  source: ['derived', 'fuel carried along at the speed of the air; drops and wall film are slower'],
} as const satisfies About

export const arrivalDelayOf = formula<typeof about>('arrival-delay-of', {}, ({ distance, speed }) => distance / speed)

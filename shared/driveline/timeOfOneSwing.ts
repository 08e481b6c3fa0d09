import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { swingCount, swingTime } from './quantities.ts'

/** Time of one full swing from the time of many. `t / N`, seconds. */
export const about = {
  name: 'Time of one swing',
  in: { whole: role(swingTime, 't', 'Time of all swings'), swings: swingCount },
  out: swingTime,
  equation: 'whole / swings',
  source: ['definition', 'of a mean'],
} as const satisfies About

export const timeOfOneSwing = formula<typeof about>('time-of-one-swing', {}, ({ whole, swings }) => whole / swings)

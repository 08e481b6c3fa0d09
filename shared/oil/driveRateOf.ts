import { secondsPerHour } from '../formula/constants.ts'
import { type About, formula } from '../formula/formula.ts'
import { driveOff, driveRate } from './quantities.ts'

/** Rate of a loss that takes a share in an hour. */
export const about = {
  name: 'Rate of giving off',
  in: { hourly: driveOff },
  out: driveRate,
  equation: '-log(1 - hourly) / hour',
  constants: { hour: secondsPerHour },
  sample: { hourly: [0.005, 0.6] },
  source: ['derived', 'a steady rate, compounded over an hour'],
} as const satisfies About

export const driveRateOf = formula<typeof about>('drive-rate-of', {}, ({ hourly }) => -Math.log(1 - hourly) / secondsPerHour.value)

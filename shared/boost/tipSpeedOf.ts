import { formula, type About } from '../formula/formula.ts'
import { exducer, tipSpeed, turboSpeed } from './quantities.ts'

/** Speed of a wheel’s rim. */
export const about = {
  name: 'Tip speed of a wheel',
  in: { speed: turboSpeed, diameter: exducer },
  out: tipSpeed,
  equation: 'speed * diameter / 2',
  source: ['definition', 'of turning'],
} as const satisfies About

export const tipSpeedOf = formula<typeof about>('tip-speed-of', {}, ({ speed, diameter }) => (speed * diameter) / 2)

import { shaftSpeed } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { cutTime, turnsOf } from './quantities.ts'

/** Shaft turns during a fuel cut. */
export const about = {
  name: 'Turns of a fuel cut',
  in: { speed: shaftSpeed, time: cutTime },
  out: turnsOf,
  equation: 'speed * time / (2 * pi)',
  source: ['definition', 'speed times time'],
} as const satisfies About

export const turnsInCut = formula<typeof about>('turns-in-cut', {}, ({ speed, time }) => (speed * time) / (2 * Math.PI))

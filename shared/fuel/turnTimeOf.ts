import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { turnTime } from './quantities.ts'

/** Time of one shaft turn. Each rotor takes one charge per turn, so this is all the time an injector has for it. */
export const about = {
  name: 'Time of one shaft turn',
  in: { speed: shaftSpeed },
  out: turnTime,
  equation: '2 * pi / speed',
  source: ['definition', 'one turn is 2π; each rotor of a Wankel engine fires once per shaft turn'],
} as const satisfies About

export const turnTimeOf = formula<typeof about>('turn-time-of', {}, ({ speed }) => (2 * Math.PI) / speed)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { coolantFlowOf } from './quantities.ts'


/** Flow of a pump driven by the engine, in proportion to shaft speed. */
export const about = {
  name: 'Coolant flow at a shaft speed',
  in: { rated: role(coolantFlowOf, 'V_c0', 'Flow at the stated speed'), speed: shaftSpeed, ratedSpeed: role(shaftSpeed, 'n_0', 'Stated shaft speed') },
  out: coolantFlowOf,
  equation: 'rated * speed / ratedSpeed',
  source: ['common-practice', 'similarity of pumps: flow in proportion to speed in the same circuit'],
  notes: 'Cavitation at high speed takes from this: a pump driven too fast no longer follows it.',
} as const satisfies About

export const pumpFlowAt = formula<typeof about>('pump-flow-at', {}, ({ rated, speed, ratedSpeed }) => (rated * speed) / ratedSpeed)

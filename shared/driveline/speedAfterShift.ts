import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { gearRatio } from './quantities.ts'

/** Shaft speed to which a change of gear takes the engine at one road speed. `n i_2 / i_1`. */
export const about = {
  name: 'Speed after a change of gear',
  in: { speed: role(shaftSpeed, 'n_1', 'Speed before the change'), from: role(gearRatio, 'i_1', 'Ratio before'), to: role(gearRatio, 'i_2', 'Ratio after') },
  out: role(shaftSpeed, 'n_2', 'Speed after the change'),
  equation: 'speed * to / from',
  source: ['definition', 'of a gear ratio, at one road speed'],
} as const satisfies About

export const speedAfterShift = formula<typeof about>('speed-after-shift', {}, ({ speed, from, to }) => (speed * to) / from)

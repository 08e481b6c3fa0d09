import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { handoverPressure, loadMoves } from './quantities.ts'

/** Manifold pressure at which the secondaries begin, by the direction in which load moves. */
export const about = {
  name: 'Start by direction of load',
  in: { moving: loadMoves, start: handoverPressure, off: role(handoverPressure, 'p_off', 'Manifold pressure at which secondaries stop') },
  out: role(handoverPressure, 'p_s', 'Start that holds now'),
  steps: ['Rising load: the secondaries wait for the start.', 'Falling load: once on, they stay down to the lower pressure, at their least where the blend asks less.'],
  source: ['definition', 'hysteresis'],
} as const satisfies About

export const startOfOrder = formula<typeof about>('start-of-order', {}, ({ moving, start, off }) => (moving === 'falling' ? off : start))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { portAngle, portArea, rampAngle } from './quantities.ts'

/** Open area of a port at a shaft angle. */
export const about = {
  name: 'Port area at a shaft angle',
  in: {
    whole: role(portArea, 'A_0', 'Whole area'), angle: portAngle, open: role(portAngle, 'θ_o', 'Port opens'), close: role(portAngle, 'θ_c', 'Port closed'),
    opening: role(rampAngle, 'δ_o', 'Angle in which it opens'), closing: role(rampAngle, 'δ_c', 'Angle in which it closes'),
  },
  out: portArea,
  equation: 'whole * max(0, min(1, (angle - open) / opening, (close - angle) / closing))',
  source: ['derived', 'an edge that crosses the port at an even pace, once to open it and once to close it'],
} as const satisfies About

export const portAreaAt = formula<typeof about>('port-area-at', {}, ({ whole, angle, open, close, opening, closing }) => whole * Math.max(0, Math.min(1, (angle - open) / opening, (close - angle) / closing)))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { unbalanceAngle } from './quantities.ts'

/** Where to put mass on; where the unbalance lies is where to take it off. */
export const about = {
  name: 'Angle opposite an unbalance',
  in: { angle: unbalanceAngle },
  out: role(unbalanceAngle, 'θ_o', 'Angle opposite'),
  equation: 'atan2(-sin(angle), -cos(angle))',
  source: ['definition', 'half a turn away'],
} as const satisfies About

export const oppositeAngle = formula<typeof about>('opposite-angle', {}, ({ angle }) => Math.atan2(-Math.sin(angle), -Math.cos(angle)))

import { standardGravity } from '../formula/constants.ts'
import { type About, formula } from '../formula/formula.ts'
import { sideAcceleration, tiltAngle } from './quantities.ts'

/** Tilt of a liquid surface under a steady acceleration. */
export const about = {
  name: 'Tilt of the oil surface',
  in: { acceleration: sideAcceleration },
  out: tiltAngle,
  equation: 'atan(acceleration / g)',
  constants: { g: standardGravity },
  source: ['white-fluid', 'rigid-body acceleration of a liquid: the surface stands square to the sum of gravity and inertia'],
} as const satisfies About

export const tiltOf = formula<typeof about>('tilt-of', {}, ({ acceleration }) => Math.atan(acceleration / standardGravity.value))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltCircleRadius, boltCount, boltPreload, heldTorque, jointFriction } from './quantities.ts'

/** Torque that clamped faces hold by friction. `z μ F r`, newton metres. */
export const about = {
  name: 'Torque that friction holds',
  in: { bolts: boltCount, friction: jointFriction, preload: boltPreload, radius: boltCircleRadius },
  out: role(heldTorque, 'M_r', 'Held by friction'),
  equation: 'bolts * friction * preload * radius',
  source: ['shigley-machine-design', 'chapter 8: friction of clamped faces, each bolt at the mean radius'],
  notes: 'One joint between two housings; every joint of the stack sees the same torque or less.',
} as const satisfies About

export const frictionTorqueOfJoint = formula<typeof about>('friction-torque-of-joint', {}, ({ bolts, friction, preload, radius }) => bolts * friction * preload * radius)

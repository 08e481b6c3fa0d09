import { formula, type About } from '../formula/formula.ts'
import { torque } from '../engine/quantities.ts'
import { angularAcceleration, inertia } from './quantities.ts'

/** How fast a free engine gains speed under a torque. `M / J`, rad/s². */
export const about = {
  name: 'Rate of rev-up',
  in: { torque, inertia },
  out: angularAcceleration,
  equation: 'torque / inertia',
  source: ['definition', 'Newton’s second law for turning'],
  notes: 'The clutch is out. Torque of the moment: an engine under no load rarely makes that of its full-load curve.',
} as const satisfies About

export const revUpRate = formula<typeof about>('rev-up-rate', {}, ({ torque, inertia }) => torque / inertia)

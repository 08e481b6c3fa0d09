import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { jointStiffness, loadFactorOf as factor } from './quantities.ts'

/** Share of a pulling load that adds to the bolt. `k_b / (k_b + k_s)`. */
export const about = {
  name: 'Share of a load that the bolt takes',
  in: { bolt: role(jointStiffness, 'k_b', 'Stiffness of the bolt'), stack: role(jointStiffness, 'k_s', 'Stiffness of the stack at one bolt') },
  out: factor,
  equation: 'bolt / (bolt + stack)',
  source: ['shigley-machine-design', 'section 8-7, joint constant C'],
  notes: 'Load applied under the head; inside the stack the bolt feels less.',
} as const satisfies About

export const loadFactorOf = formula<typeof about>('load-factor-of', {}, ({ bolt, stack }) => bolt / (bolt + stack))

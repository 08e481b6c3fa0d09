import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { axleTorque, roadForce, tyreRadius } from './quantities.ts'

/** Force at which the driven tyres slip. `M_t / r`, newton. */
export const about = {
  name: 'Force at the tyre limit',
  in: { limit: role(axleTorque, 'M_t', 'Tyre limit'), radius: tyreRadius },
  out: role(roadForce, 'F_t', 'Force at the tyre limit'),
  equation: 'limit / radius',
  source: ['definition', 'of torque'],
} as const satisfies About

export const gripForce = formula<typeof about>('grip-force', {}, ({ limit, radius }) => limit / radius)

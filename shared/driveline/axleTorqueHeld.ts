import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { axleTorque } from './quantities.ts'

/** Torque that the axle really carries: what the engine gives, but no more than the tyres hold. `min(M_d, M_t)`, newton metres. */
export const about = {
  name: 'Torque the axle carries',
  in: { given: role(axleTorque, 'M_d', 'Torque from the engine'), held: role(axleTorque, 'M_t', 'Tyre limit') },
  out: role(axleTorque, 'M_a', 'Torque the axle carries'),
  equation: 'min(given, held)',
  source: ['derived', 'a spinning tyre passes on its grip and no more'],
  notes: 'Steady pull. A wheel that spins and then grips hits the shafts with its own inertia on top.',
} as const satisfies About

export const axleTorqueHeld = formula<typeof about>('axle-torque-held', {}, ({ given, held }) => Math.min(given, held))

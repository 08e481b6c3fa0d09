import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { clutchTorque, reflectedInertia, slipTime } from './quantities.ts'

/** Time a clutch slips while the engine is held at one speed and the car is drawn up to it from rest. `J ω / M`, seconds. */
export const about = {
  name: 'Slip time of a launch',
  in: { inertia: reflectedInertia, speed: role(shaftSpeed, 'n', 'Engine speed held'), torque: role(clutchTorque, 'M_s', 'Torque while slipping') },
  out: slipTime,
  equation: 'inertia * speed / torque',
  source: ['shigley-machine-design', 'section 16-8, one side held at constant speed'],
  notes: 'Constant slip torque; rolling resistance and gradient left out. Source states no range.',
} as const satisfies About

export const launchSlipTime = formula<typeof about>('launch-slip-time', {}, ({ inertia, speed, torque }) => (inertia * speed) / torque)

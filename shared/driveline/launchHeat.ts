import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { clutchTorque, engagementHeat, slipTime } from './quantities.ts'

/** Heat made while slip falls evenly from the engine's speed to nothing. `M ω t / 2`, joules: as much as the car gains. */
export const about = {
  name: 'Heat of a launch',
  in: { torque: role(clutchTorque, 'M_s', 'Torque while slipping'), speed: role(shaftSpeed, 'n', 'Engine speed held'), time: slipTime },
  out: engagementHeat,
  equation: 'torque * speed * time / 2',
  source: ['shigley-machine-design', 'section 16-8, power is torque times slip speed'],
  notes: 'Constant slip torque, engine held at one speed. Source states no range.',
} as const satisfies About

export const launchHeat = formula<typeof about>('launch-heat', {}, ({ torque, speed, time }) => (torque * speed * time) / 2)

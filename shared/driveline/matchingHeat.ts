import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { engagementHeat, inertia, reflectedInertia } from './quantities.ts'

/**
 * Heat made when a clutch brings two turning parts to one speed. `J1 J2 (ω1 − ω2)² / (2 (J1 + J2))`, joules: what kinetic energy is
 * lost while angular momentum is kept.
 */
export const about = {
  name: 'Heat of matching two speeds',
  in: { engine: role(inertia, 'J_1', 'Inertia on the engine side'), car: role(reflectedInertia, 'J_2', 'Inertia on the gearbox side'), before: role(shaftSpeed, 'n_1', 'Speed on the engine side'), after: role(shaftSpeed, 'n_2', 'Speed on the gearbox side') },
  out: engagementHeat,
  equation: 'engine * car * (before - after)^2 / (2 * (engine + car))',
  source: ['shigley-machine-design', 'section 16-8, energy dissipated'],
  notes: 'No throttle while it slips. Source states no range.',
} as const satisfies About

export const matchingHeat = formula<typeof about>('matching-heat', {},
  ({ engine, car, before, after }) => (engine * car * (before - after) ** 2) / (2 * (engine + car)))

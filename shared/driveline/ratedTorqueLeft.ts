import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { clampShare, clutchTorque } from './quantities.ts'

/** What is left of a maker's static rating once clamp is lost: torque follows clamp. `M_0 y`, newton metres. */
export const about = {
  name: 'Rating left at speed and wear',
  in: { rated: role(clutchTorque, 'M_0', 'Rated clutch torque'), left: clampShare },
  out: clutchTorque,
  equation: 'rated * left',
  source: ['derived', 'slip torque is proportional to clamp load at the same friction'],
  notes: 'A static rating is taken as that of a new clutch standing still.',
} as const satisfies About

export const ratedTorqueLeft = formula<typeof about>('rated-torque-left', {}, ({ rated, left }) => rated * left)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { clampLoad, clutchTorque, drivenPlates, facingFriction, frictionRadius } from './quantities.ts'

/**
 * Torque at which a dry clutch begins to slip. One clamp load presses both sides of each driven plate, and each side brings its own
 * friction: `z F r (μ1 + μ2)`, newton metres.
 */
export const about = {
  name: 'Clutch torque of two facings',
  in: {
    clamp: clampLoad, radius: frictionRadius, plates: drivenPlates,
    flywheelSide: role(facingFriction, 'μ_1', 'Friction on the flywheel side'), coverSide: role(facingFriction, 'μ_2', 'Friction on the cover side'),
  },
  out: clutchTorque,
  equation: 'plates * clamp * radius * (flywheelSide + coverSide)',
  source: ['shigley-machine-design', 'section 16-5, summed over the faces'],
  notes: 'Source states no range. Both facings of a plate slip together, because hub and facings are one piece.',
} as const satisfies About

export const clutchTorqueTwoSides = formula<typeof about>('clutch-torque-two-sides', {},
  ({ clamp, radius, plates, flywheelSide, coverSide }) => plates * clamp * radius * (flywheelSide + coverSide))

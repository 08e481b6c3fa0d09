import { formula, type About } from '../formula/formula.ts'
import { standardGravity } from '../formula/constants.ts'
import { axleMass, axleTorque, centreHeight, tyreGrip, tyreRadius, wheelbase } from './quantities.ts'

/**
 * Torque at a driven rear axle at which its tyres slip, with the weight that pulling away shifts onto it.
 * `μ m_a g r / (1 − μ h / l)`, newton metres.
 */
export const about = {
  name: 'Tyre limit of the driven axle',
  in: { grip: tyreGrip, axleMass, radius: tyreRadius, height: centreHeight, wheelbase },
  out: axleTorque,
  constants: { g: standardGravity },
  equation: 'grip * axleMass * g * radius / (1 - grip * height / wheelbase)',
  source: ['gillespie-dynamics', 'chapter 2, traction-limited acceleration, rear drive'],
  notes: 'Level road, rear drive, both wheels at their limit together. Source states no range.',
  sample: { grip: [0.3, 1.6], height: [0.2, 0.7] },
} as const satisfies About

export const tyreLimit = formula<typeof about>('tyre-limit', {}, ({ grip, axleMass, radius, height, wheelbase }) =>
  (grip * axleMass * standardGravity.value * radius) / (1 - (grip * height) / wheelbase))

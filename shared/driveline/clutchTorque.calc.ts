import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { clutchClamp, facingInner, facingOuter, frictionCoverSide, frictionFlywheelSide, plates } from './fields.ts'
import { role } from '../quantity/quantity.ts'
import { clampShare, clutchTorque, facingPressure, frictionRadius } from './quantities.ts'
import { frictionRadiusUniformWear } from './frictionRadiusUniformWear.ts'
import { frictionRadiusUniformPressure } from './frictionRadiusUniformPressure.ts'
import { clutchTorqueTwoSides } from './clutchTorqueTwoSides.ts'
import { facingPressureUniformPressure } from './facingPressureUniformPressure.ts'
import { facingPressureUniformWear } from './facingPressureUniformWear.ts'
import { clampLeft } from './clampLeft.ts'

export default calculation({
  id: 'clutch-torque',
  title: 'Clutch torque from its facings',
  theme: 'driveline',
  asks: 'What torque should this clutch hold, by its facings and clamp load?',
  article: 'clutch-capacity',
  cautions: ['rotating-burst', 'model-only'],
  in: { clamp: clutchClamp, left: free(clampShare, 1), outer: facingOuter, inner: facingInner, plates, flywheelSide: frictionFlywheelSide, coverSide: frictionCoverSide },
  out: {
    bedded: role(clutchTorque, 'M_w', 'Clutch torque, bedded in'), fresh: role(clutchTorque, 'M_p', 'Clutch torque, new facing'),
    radius: frictionRadius, pressure: role(facingPressure, 'p_i', 'Pressure at the inner edge, bedded in'), even: role(facingPressure, 'p_f', 'Pressure on a new facing'),
  },
  curve: ['clamp', 'bedded'],
  answer({ clamp, left, outer, inner, plates, flywheelSide, coverSide }) {
    if (!(outer > inner)) throw new NoAnswer('clutch', 'The facing has no width: its outer diameter must be larger than its inner one.')
    const pressed = clampLeft({ fresh: clamp, left })
    const radius = frictionRadiusUniformWear({ outer, inner })
    return {
      radius,
      bedded: clutchTorqueTwoSides({ clamp: pressed, radius, plates, flywheelSide, coverSide }),
      fresh: clutchTorqueTwoSides({ clamp: pressed, radius: frictionRadiusUniformPressure({ outer, inner }), plates, flywheelSide, coverSide }),
      pressure: facingPressureUniformWear({ clamp: pressed, outer, inner }),
      even: facingPressureUniformPressure({ clamp: pressed, outer, inner }),
    }
  },
  says: () => 'Bedded in it holds {bedded}; new, {fresh}. Friction is the weak number: {flywheelSide} and {coverSide} are for facings dry, clean and not yet hot.',
  leavesOut: 'Fade with heat, clamp lost to wear and speed unless entered as the share left, and what the release bearing still holds up.',
})

import { calculation } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { at } from './point.ts'
import { clampLostToSpeed, clampLostToWear, clampLossSpeed, clutchBasis, clutchClamp, clutchRating, facingInner, facingOuter, frictionCoverSide, frictionFlywheelSide, plates } from './fields.ts'
import { clampShareLeft } from './clampShareLeft.ts'
import { clampLeft } from './clampLeft.ts'
import { clutchTorqueTwoSides } from './clutchTorqueTwoSides.ts'
import { frictionRadiusUniformWear } from './frictionRadiusUniformWear.ts'
import { ratedTorqueLeft } from './ratedTorqueLeft.ts'

/** What the clutch holds at a shaft speed, by the basis of its rating. A measured slip torque stands as it is: it was measured turning and worn. */
export default calculation({
  id: 'clutch-capacity',
  title: 'What the clutch holds at speed',
  theme: 'driveline',
  asks: 'How much torque does the clutch hold at this shaft speed?',
  article: 'clutch-capacity',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    speed: engine.speed, basis: clutchBasis, rating: clutchRating, clamp: clutchClamp, outer: facingOuter, inner: facingInner, plates,
    flywheelSide: frictionFlywheelSide, coverSide: frictionCoverSide, worn: clampLostToWear, thrown: clampLostToSpeed, lossSpeed: clampLossSpeed,
  },
  out: { capacity: at.clutchCapacity },
  curve: ['speed', 'capacity'],
  answer({ speed, basis, rating, clamp, outer, inner, plates, flywheelSide, coverSide, worn, thrown, lossSpeed }) {
    if (basis === 'measured') return { capacity: rating }
    const left = clampShareLeft({ worn, thrown, speed, lossSpeed })
    if (basis === 'maker') return { capacity: ratedTorqueLeft({ rated: rating, left }) }
    return { capacity: clutchTorqueTwoSides({ clamp: clampLeft({ fresh: clamp, left }), radius: frictionRadiusUniformWear({ outer, inner }), plates, flywheelSide, coverSide }) }
  },
  says: ({ basis }) => basis === 'measured' ? 'It was measured to slip at {capacity}: that stands, worn and turning as it was.'
    : basis === 'maker' ? 'Of the {rating} that its maker states standing still, {capacity} is left at {speed} after wear and speed have taken their share.'
      : 'From its facing and clamp load it should hold {capacity} at {speed}: an estimate, as good as its friction figures.',
  leavesOut: 'Heat fade, oil or dust on the facing, and a hydraulic release that does not let go in full.',
})

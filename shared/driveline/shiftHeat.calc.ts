import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { at as engine } from '../engine/point.ts'
import { axleRatio, clutchInertia, flywheelInertia, mass, rollingRadius, shaftInertia } from './fields.ts'
import { engagementHeat, gear } from './quantities.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { inertiaSum } from './inertiaSum.ts'
import { matchingHeat } from './matchingHeat.ts'
import { ratioIn, ratiosOf } from './ratioIn.ts'
import { reflectedCarInertia } from './reflectedCarInertia.ts'
import { speedAfterShift } from './speedAfterShift.ts'

export default calculation({
  id: 'shift-heat',
  title: 'Speed and heat of a change of gear',
  theme: 'driveline',
  asks: 'To what speed does a change of gear take the engine, and what heat does the clutch make of it?',
  article: 'flywheel-mass-and-inertia',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    speed: engine.speed, from: free(gear, 'second', 'Gear before'), to: free(gear, 'third', 'Gear after'), ...ratiosOf, finalDrive: axleRatio, mass, radius: rollingRadius,
    shaft: shaftInertia, flywheel: flywheelInertia, clutch: clutchInertia,
  },
  out: { after: role(shaftSpeed, 'n_2', 'Speed after the change'), heat: engagementHeat },
  curve: ['speed', 'heat'],
  answer({ speed, from, to, finalDrive, mass, radius, shaft, flywheel, clutch, ...ratios }) {
    const ratio = ratioIn(to, ratios)
    const after = speedAfterShift({ speed, from: ratioIn(from, ratios), to: ratio })
    return { after, heat: matchingHeat({ engine: inertiaSum({ shaft, flywheel, clutch }), car: reflectedCarInertia({ mass, radius, ratio, finalDrive }), before: speed, after }) }
  },
  says: () => 'From {speed} the change lands at {after}, and if the clutch alone matches the speeds it makes {heat} of heat.',
  leavesOut: 'Throttle during the change, and road speed lost while the clutch is out.',
})

import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { accelerationOf } from './accelerationOf.ts'
import { dragForceAt } from './dragForceAt.ts'
import { driveForce } from './driveForce.ts'
import { equivalentMassIn } from './equivalentMassIn.ts'
import { axleRatio, base, centre, clutchInertia, dragArea, drivenAxle, efficiency, flywheelInertia, grip, mass, rollingRadius, rollingResistance, shaftInertia, wheels } from './fields.ts'
import { gripForce } from './gripForce.ts'
import { inertiaSum } from './inertiaSum.ts'
import { gear, roadAcceleration, roadForce, roadGradient, speedInGear } from './quantities.ts'
import { ratioIn, ratiosOf } from './ratioIn.ts'
import { roadResistance } from './roadResistance.ts'
import { speedInGearAt } from './speedInGearAt.ts'
import { tyreLimit } from './tyreLimit.ts'

export default calculation({
  id: 'acceleration-in-gear',
  title: 'Acceleration in a gear',
  theme: 'driveline',
  asks: 'How hard does the car pull at this shaft speed in this gear, and is it the engine or the tyres that set it?',
  article: 'the-order-of-decisions',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    gear: free(gear, 'third'), speed: engine.speed, torque: engine.torque, ...ratiosOf, finalDrive: axleRatio, radius: rollingRadius, efficiency, mass, wheels, shaft: shaftInertia, flywheel: flywheelInertia, clutch: clutchInertia,
    grip, axleMass: drivenAxle, height: centre, wheelbase: base, dragArea, rolling: rollingResistance, gradient: free(roadGradient, 0), pressure: siteAirPressure, temperature: siteAirTemperature,
  },
  out: {
    acceleration: roadAcceleration, road: speedInGear, drive: role(roadForce, 'F_d', 'Force the engine brings to the road'), taken: role(roadForce, 'F_t', 'Force the driven tyres take'), drag: role(roadForce, 'F_a', 'Air drag'),
  },
  curve: ['torque', 'acceleration'],
  answer({ gear, speed, torque, finalDrive, radius, efficiency, mass, wheels, shaft, flywheel, clutch, grip, axleMass, height, wheelbase, dragArea, rolling, gradient, pressure, temperature, ...ratios }) {
    const ratio = ratioIn(gear, ratios)
    const limit = tyreLimit({ grip, axleMass, radius, height, wheelbase })
    if (!(limit > 0 && limit < Infinity)) throw new NoAnswer('tyres', 'With this grip and height the car would tip over backwards before its tyres slip: check grip, height and wheelbase.')
    const road = speedInGearAt({ speed, ratio, finalDrive, radius })
    const drive = driveForce({ torque, ratio, finalDrive, efficiency, radius })
    const taken = gripForce({ limit, radius })
    const drag = dragForceAt({ density: gasDensity({ pressure, temperature }), area: dragArea, speed: road })
    const turning = inertiaSum({ shaft, flywheel, clutch })
    const acceleration = accelerationOf({ drive, grip: taken, drag, resistance: roadResistance({ mass, rolling, gradient }), mass: equivalentMassIn({ mass, wheels, radius, engine: turning, ratio, finalDrive }) })
    return { acceleration, road, drive, taken, drag }
  },
  says: ({ drive, taken }) => drive > taken
    ? 'At {road} in {gear} gear the engine brings {drive} and the tyres take {taken}: they set {acceleration}, and the rest is smoke.'
    : 'At {road} in {gear} gear the engine brings {drive}, which the tyres take: {acceleration}.',
  leavesOut: 'Tyre slip, downforce, wind, the time a shift takes, and boost that is still building.',
})

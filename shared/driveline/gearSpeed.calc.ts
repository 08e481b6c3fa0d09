import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { torque } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { axleRatio, base, centre, drivenAxle, efficiency, grip, rollingRadius } from './fields.ts'
import { gear, speedInGear } from './quantities.ts'
import { ratioIn, ratiosOf } from './ratioIn.ts'
import { speedInGearAt } from './speedInGearAt.ts'
import { tyreLimit } from './tyreLimit.ts'
import { tyreLimitAtEngine } from './tyreLimitAtEngine.ts'

export default calculation({
  id: 'gear-speed',
  title: 'Road speed and tyre limit in a gear',
  theme: 'driveline',
  asks: 'How fast is the car at this shaft speed, and what engine torque can its tyres take in this gear?',
  article: 'the-order-of-decisions',
  cautions: ['rotating-burst', 'model-only'],
  in: { gear: free(gear, 'third'), speed: engine.speed, ...ratiosOf, finalDrive: axleRatio, radius: rollingRadius, efficiency, grip, axleMass: drivenAxle, height: centre, wheelbase: base },
  out: { road: speedInGear, limit: role(torque, 'M_lim', 'Engine torque at the tyre limit') },
  curve: ['speed', 'road'],
  answer({ gear, speed, finalDrive, radius, efficiency, grip, axleMass, height, wheelbase, ...ratios }) {
    const ratio = ratioIn(gear, ratios)
    const limit = tyreLimit({ grip, axleMass, radius, height, wheelbase })
    if (!(limit > 0 && limit < Infinity)) throw new NoAnswer('tyres', 'With this grip and height the car would tip over backwards before its tyres slip: check grip, height and wheelbase.')
    return { road: speedInGearAt({ speed, ratio, finalDrive, radius }), limit: tyreLimitAtEngine({ limit, ratio, finalDrive, efficiency }) }
  },
  says: () => 'In {gear} gear {speed} is {road}, and the driven tyres slip at {limit} from the engine: torque above that is smoke.',
  leavesOut: 'Tyre slip, growth at speed, downforce, and a driven front axle.',
})

import { calculation, free } from '../calculation/calculation.ts'
import { axleRatio, clutchInertia, flywheelInertia, mass, rollingRadius, shaftInertia, wheels } from './fields.ts'
import { equivalentMass, gear, massFactor } from './quantities.ts'
import { equivalentMassIn } from './equivalentMassIn.ts'
import { inertiaSum } from './inertiaSum.ts'
import { massFactorOf } from './massFactorOf.ts'
import { ratioIn, ratiosOf } from './ratioIn.ts'

export default calculation({
  id: 'equivalent-mass',
  title: 'What a flywheel weighs in each gear',
  theme: 'driveline',
  asks: 'What mass does the engine feel in this gear, with all that turns?',
  article: 'flywheel-mass-and-inertia',
  cautions: ['rotating-burst', 'model-only'],
  in: { gear: free(gear, 'second'), ...ratiosOf, finalDrive: axleRatio, radius: rollingRadius, mass, wheels, shaft: shaftInertia, flywheel: flywheelInertia, clutch: clutchInertia },
  out: { equivalent: equivalentMass, factor: massFactor },
  curve: ['flywheel', 'equivalent'],
  answer({ gear, finalDrive, radius, mass, wheels, shaft, flywheel, clutch, ...ratios }) {
    const equivalent = equivalentMassIn({ mass, wheels, radius, engine: inertiaSum({ shaft, flywheel, clutch }), ratio: ratioIn(gear, ratios), finalDrive })
    return { equivalent, factor: massFactorOf({ equivalent, mass }) }
  },
  says: () => 'In {gear} gear the car feels like {equivalent}, {factor} times its mass. A lighter flywheel is felt in the low gears and hardly in the high ones.',
  leavesOut: 'Gearbox, shafts, and losses.',
})

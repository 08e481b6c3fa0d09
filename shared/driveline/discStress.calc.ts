import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { mm } from '../quantity/si.ts'
import { at as engine } from '../engine/point.ts'
import { discStress, metalDensity, poisson, rimSpeed, ringOuterDiameter } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { boltHoleStress } from './boltHoleStress.ts'
import { discHoopStress } from './discHoopStress.ts'
import { discRadialStress } from './discRadialStress.ts'
import { discStressAtHole } from './discStressAtHole.ts'
import { halfOf } from './halfOf.ts'
import { rimSpeedOf } from './rimSpeedOf.ts'

export default calculation({
  id: 'disc-stress',
  title: 'Stress in a spinning disc',
  theme: 'driveline',
  asks: 'What stress does its own speed put into a flat flywheel?',
  article: 'shaft-speed-limits',
  cautions: ['rotating-burst', 'model-only'],
  in: {
    speed: engine.speed, diameter: free(ringOuterDiameter, mm(280), 'Outer diameter'), hole: free(ringOuterDiameter, mm(60), 'Diameter of the hole in the middle'),
    boltCircle: free(ringOuterDiameter, mm(90), 'Diameter of the bolt circle'), density: free(metalDensity, 7850), poisson: free(poisson, 0.3),
  },
  out: { stress: role(discStress, 'σ_0', 'Hoop stress at the hole in the middle'), atBolts: role(discStress, 'σ_p', 'Peak stress at a bolt hole'), rim: rimSpeed },
  curve: ['speed', 'stress'],
  answer({ speed, diameter, hole, boltCircle, density, poisson }) {
    if (!(diameter > boltCircle && boltCircle > hole)) throw new NoAnswer('flywheel', 'From the inside out come hole, bolt circle and rim: each diameter must be larger than the one before.')
    const disc = { density, speed, poisson, outer: halfOf({ diameter }), hole: halfOf({ diameter: hole }) }
    const radius = halfOf({ diameter: boltCircle })
    return {
      stress: discStressAtHole(disc),
      atBolts: boltHoleStress({ hoop: discHoopStress({ ...disc, radius }), radial: discRadialStress({ ...disc, radius }) }),
      rim: rimSpeedOf({ diameter, speed }),
    }
  },
  says: () => 'At {speed} the hole’s edge sees {stress} and a bolt hole {atBolts}, from speed alone. Heat from the clutch, cracks and steps in thickness come on top: the part’s own spin test decides, and a scatter shield stands between it and you.',
  leavesOut: 'Clutch bolts and clamp, heat, ring gear fit, thickness steps, fatigue. This is no proof of any part.',
})

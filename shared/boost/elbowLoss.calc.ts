import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { churchillFriction } from '../fuel/churchillFriction.ts'
import { wallRoughness } from '../fuel/quantities.ts'
import { airViscosity } from '../media/airViscosity.ts'
import { deg, mm, um } from '../quantity/si.ts'
import { bendLoss } from './bendLoss.ts'
import { ductCoefficient } from './ductCoefficient.ts'
import { ductReynolds } from './ductReynolds.ts'
import { ductRoughness } from './ductRoughness.ts'
import { ductSpeed } from './ductSpeed.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { bendAngle, bendCount, bendLoss as heads, bendRadius, ductBore, ductRun, gasSpeed, lossCoefficient, pressureLoss } from './quantities.ts'

export default calculation({
  id: 'elbow-loss', title: 'Pressure loss of a duct with elbows', theme: 'turbo', article: 'the-path-in', cautions: ['model-only'],
  asks: 'What do a duct of this bore and its elbows cost?',
  in: {
    flow: engine.air, bore: free(ductBore, mm(63)), length: free(ductRun, 1.2), bends: free(bendCount, 3), angle: free(bendAngle, deg(90)), radius: free(bendRadius, 1.5),
    others: free(heads, 1, 'Other losses in velocity heads: 1 where the duct ends in a box'), roughness: free(wallRoughness, um(5)),
    pressure: engine.manifold, temperature: engine.charge,
  },
  out: { loss: pressureLoss, coefficient: lossCoefficient, bend: heads, speed: gasSpeed },
  curve: ['bore', 'loss'],
  answer({ flow, bore, length, bends, angle, radius, others, roughness, pressure, temperature }) {
    const density = gasDensity({ pressure, temperature })
    const reynolds = ductReynolds({ flow, bore, viscosity: airViscosity({ temperature }) })
    const friction = churchillFriction({ reynolds, relativeRoughness: ductRoughness({ roughness, bore }) })
    const bend = bendLoss({ friction, angle, radius })
    const coefficient = ductCoefficient({ bore, length, friction, bends, bend, others })
    return { loss: flowPressureLoss({ coefficient, flow, density }), coefficient, bend, speed: ductSpeed({ flow, density, bore }) }
  },
  says: () => 'At {speed} in the pipe the run costs {loss}. Each elbow takes {bend} of the velocity’s pressure; its radius matters less than the bore: loss goes with the fourth power of it. For the sheet the run’s loss coefficient is {coefficient}.',
  leavesOut: 'Steps, hose joints and clamps, flow that enters a bend already twisted, and density that changes along the way.',
})

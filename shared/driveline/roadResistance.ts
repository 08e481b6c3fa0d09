import { standardGravity } from '../formula/constants.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { carMass, roadForce, roadGradient, rollingResistanceOf } from './quantities.ts'

/** Force of the rolling tyres and of the gradient. `m g (c_r + s)`, newton. */
export const about = {
  name: 'Rolling resistance and gradient',
  in: { mass: carMass, rolling: rollingResistanceOf, gradient: roadGradient },
  out: role(roadForce, 'F_r', 'Rolling resistance and gradient'),
  constants: { g: standardGravity },
  equation: 'mass * g * (rolling + gradient)',
  source: ['gillespie-dynamics', 'chapter 4, rolling resistance and grade'],
  notes: 'For gradients up to a fifth, where sine and rise over length differ by less than 2 %.',
} as const satisfies About

export const roadResistance = formula<typeof about>('road-resistance', {}, ({ mass, rolling, gradient }) => mass * standardGravity.value * (rolling + gradient))

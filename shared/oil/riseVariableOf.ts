import { formula, type About } from '../formula/formula.ts'
import { flowVariable, frictionVariable, riseVariable, sideFlowShare } from './quantities.ts'

/** Warming of the oil in a film, dimensionless: friction over the heat that the flow carries off. */
export const about = {
  name: 'Temperature rise variable of a film',
  in: { friction: frictionVariable, flow: flowVariable, side: sideFlowShare },
  out: riseVariable,
  equation: '4 * pi * friction / (flow * (1 - side / 2))',
  sample: { flow: [0.4, 6.2] },
  source: ['shigley-bearings', 'equation 12-15: side flow leaves at the mean temperature, the rest at the highest'],
} as const satisfies About

export const riseVariableOf = formula<typeof about>('rise-variable-of', {}, ({ friction, flow, side }) => (4 * Math.PI * friction) / (flow * (1 - side / 2)))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow, linePlace } from './quantities.ts'

/** Place of a flow between the ends of a speed line. */
export const about = {
  name: 'Place along a speed line',
  in: { flow: gasFlow, surge: role(gasFlow, 'm_s', 'Flow at surge'), right: role(gasFlow, 'm_k', 'Flow at the right edge') },
  out: linePlace,
  equation: '(flow - surge) / (right - surge)',
  source: ['definition', 'share of the way from surge to the right edge'],
  sample: { surge: [0.002, 0.1], right: [0.11, 1.5] },
} as const satisfies About

export const wheelPlace = formula<typeof about>('wheel-place', {}, ({ flow, surge, right }) => (flow - surge) / (right - surge))

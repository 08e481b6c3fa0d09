import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { flowArea, gasFlow } from './quantities.ts'

/** Flow area that would pass a wanted flow, from what a known area passes between the same pressures. */
export const about = {
  name: 'Flow area for a flow',
  in: { area: flowArea, capacity: role(gasFlow, 'm_max', 'What that area passes'), flow: role(gasFlow, 'm_w', 'Flow to be passed') },
  out: role(flowArea, 'A_w', 'Flow area needed'),
  equation: 'area * flow / capacity',
  source: ['derived', 'flow goes with area between the same pressures'],
} as const satisfies About

export const areaForFlow = formula<typeof about>('area-for-flow', {}, ({ area, capacity, flow }) => (area * flow) / capacity)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { pumpFlow, pumpPressure } from './quantities.ts'

/** Flow of a pump at its rated voltage and any pressure: the straight line through two stated points. */
export const about = {
  name: 'Pump flow over pressure',
  in: {
    pressure: pumpPressure, flow: role(pumpFlow, 'Q_1', 'Flow at the first pressure'), at: role(pumpPressure, 'p_1', 'First rated pressure'),
    secondFlow: role(pumpFlow, 'Q_2', 'Flow at the second pressure'), secondAt: role(pumpPressure, 'p_2', 'Second rated pressure'),
  },
  out: pumpFlow,
  equation: 'flow + (secondFlow - flow) * (pressure - at) / (secondAt - at)',
  source: ['common-practice', 'leakage of a displacement pump grows about in proportion to pressure'],
  // A line needs two pressures that differ.
  sample: { at: [1e5, 3e5], secondAt: [4e5, 8e5] },
  notes: 'Far beyond the two stated pressures the line is a guess: a relief valve inside the pump may open.',
} as const satisfies About

export const pumpFlowAtPressure = formula<typeof about>('pump-flow-at-pressure', {}, ({ pressure, flow, at, secondFlow, secondAt }) => flow + ((secondFlow - flow) * (pressure - at)) / (secondAt - at))

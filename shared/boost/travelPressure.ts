import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { actuatorPressure, gasFlow } from './quantities.ts'

/** Bench pressure at which the wastegate is open far enough for a flow. */
export const about = {
  name: 'Actuator pressure for a wastegate flow',
  in: {
    firstMovement: role(actuatorPressure, 'p_b0', 'Bench pressure of first movement'), fullTravel: role(actuatorPressure, 'p_b1', 'Bench pressure of full travel'),
    flow: role(gasFlow, 'm_w', 'Flow through the wastegate'), capacity: role(gasFlow, 'm_max', 'What the wastegate passes wide open'),
  },
  out: actuatorPressure,
  equation: 'firstMovement + (fullTravel - firstMovement) * flow / capacity',
  source: ['derived', 'spring force goes with travel; the free area under a poppet goes with its lift until it meets that of the seat'],
  notes: 'Source states no range. A flow above the capacity asks more than full travel: such a valve is too small.',
} as const satisfies About

export const travelPressure = formula<typeof about>('travel-pressure', {}, ({ firstMovement, fullTravel, flow, capacity }) =>
  firstMovement + ((fullTravel - firstMovement) * flow) / capacity)

import { formula, type About } from '../formula/formula.ts'
import { flowArea, valveCount, valveDiameter } from './quantities.ts'

/** Flow area of wide-open wastegates. */
export const about = {
  name: 'Flow area of the wastegates',
  in: { diameter: valveDiameter, number: valveCount },
  out: flowArea,
  equation: 'number * pi * diameter^2 / 4',
  source: ['definition', 'area of circles'],
  notes: 'The seat’s bore counts, not the valve’s outer edge; the lift must be at least a quarter of it.',
} as const satisfies About

export const valveFlowArea = formula<typeof about>('valve-flow-area', {}, ({ diameter, number }) => (number * Math.PI * diameter * diameter) / 4)

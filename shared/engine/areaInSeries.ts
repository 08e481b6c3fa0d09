import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { flowArea } from '../boost/quantities.ts'

/** Area that resists as much as a throttle does beyond what it resists fully open. */
export const about = {
  name: 'Area of a throttle beyond its open loss',
  in: { area: role(flowArea, 'A', 'Area of the throttle now'), open: role(flowArea, 'A_o', 'Area of the throttle fully open') },
  out: role(flowArea, 'A_x', 'Area that stands for the rest'),
  equation: 'area * open / sqrt(open^2 - area^2)',
  source: ['derived', 'openings in a row: their losses go with one over area squared and add'],
  notes: 'Grows without bound as the throttle opens fully: its own loss is then counted with the pipe that it sits in.',
  sample: { area: [0.2e-4, 20e-4], open: [21e-4, 60e-4] },
} as const satisfies About

export const areaInSeries = formula<typeof about>('area-in-series', {}, ({ area, open }) => (area * open) / Math.sqrt(open * open - area * area))

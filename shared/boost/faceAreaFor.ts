import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { filterArea, filterExponent, gasFlow, pressureLoss } from './quantities.ts'

/** Area of the same filter cloth that passes a flow at an accepted loss, from one reading. */
export const about = {
  name: 'Filter area for a loss',
  in: {
    area: role(filterArea, 'A_0', 'Area of the filter that was measured'), flow: gasFlow, measuredFlow: role(gasFlow, 'm_0', 'Flow at that reading'),
    measured: role(pressureLoss, 'Δp_0', 'Pressure loss that was measured'), accepted: role(pressureLoss, 'Δp_a', 'Pressure loss accepted'), exponent: filterExponent,
  },
  out: filterArea,
  equation: 'area * flow / measuredFlow * (measured / accepted)^(1 / exponent)',
  source: ['derived', 'loss of a cloth goes with a power of the speed of the air that meets it, at the same density'],
  notes: 'Source states no range. The exponent lies between 1, creeping flow through fine cloth, and 2, turbulent flow through coarse mesh and housing; ISO 5011 measures loss over flow and so gives it.',
  sample: { measured: [100, 20e3], accepted: [100, 20e3] },
} as const satisfies About

export const faceAreaFor = formula<typeof about>('face-area-for', {}, ({ area, flow, measuredFlow, measured, accepted, exponent }) => ((area * flow) / measuredFlow) * (measured / accepted) ** (1 / exponent))

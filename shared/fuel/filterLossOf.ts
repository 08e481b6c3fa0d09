import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { filterOpen, fuelViscosity, fuelVolumeFlow, linePressureLoss } from './quantities.ts'

/** Pressure that a filter loses at another flow and fuel than it was rated with. */
export const about = {
  name: 'Loss of a filter',
  in: {
    ratedLoss: role(linePressureLoss, 'Δp_0', 'Loss of the clean filter as rated'), flow: fuelVolumeFlow, ratedFlow: role(fuelVolumeFlow, 'Q_0', 'Rated flow of the filter'),
    viscosity: fuelViscosity, ratedViscosity: role(fuelViscosity, 'μ_0', 'Viscosity in the rating'), open: filterOpen,
  },
  out: linePressureLoss,
  equation: 'ratedLoss * flow / ratedFlow * viscosity / ratedViscosity / open',
  sample: { ratedFlow: [1e-5, 2e-4], open: [0.1, 1] },
  source: ['darcy-1856', 'slow flow through a fine medium: loss in proportion to flow and viscosity (from memory)'],
  notes: 'For the medium alone; the housing’s own loss goes with the square of flow. A loaded filter has less area open.',
} as const satisfies About

export const filterLossOf = formula<typeof about>('filter-loss-of', {}, ({ ratedLoss, flow, ratedFlow, viscosity, ratedViscosity, open }) => ((((ratedLoss * flow) / ratedFlow) * viscosity) / ratedViscosity) / open)

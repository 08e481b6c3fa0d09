import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { cm2, kPa, lPerH } from '../quantity/si.ts'
import { faceSpeedOf } from './faceSpeedOf.ts'
import { runningTemperature, viscosity } from './fields.ts'
import { filterLossOf } from './filterLossOf.ts'
import { fuelViscosityAt } from './fuelViscosityAt.ts'
import { at } from './point.ts'
import { faceSpeed, filterArea, filterOpen, fuelViscosity, fuelVolumeFlow, linePressureLoss } from './quantities.ts'

export default calculation({
  id: 'fuel-filter',
  title: 'Filter of the feed',
  theme: 'fuel',
  asks: 'What does this filter take, clean and half blocked, at the flow of my pump?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    pumped: at.pumpFlow, ratedLoss: free(linePressureLoss, kPa(7), 'Loss of the clean filter as rated'), ratedFlow: free(fuelVolumeFlow, lPerH(300), 'Rated flow of the filter'), ratedViscosity: free(fuelViscosity, 0.55e-3, 'Viscosity of the fluid it was rated with'),
    viscosity20: viscosity, temperature: runningTemperature, area: free(filterArea, cm2(600)), open: free(filterOpen, 0.5),
  },
  out: { clean: role(linePressureLoss, 'Δp_n', 'Loss when clean'), loaded: role(linePressureLoss, 'Δp_v', 'Loss with the share that is open'), face: faceSpeed },
  curve: ['open', 'loaded'],
  answer({ pumped, ratedLoss, ratedFlow, ratedViscosity, viscosity20, temperature, area, open }) {
    if (!(ratedFlow > 0) || !(open > 0)) throw new NoAnswer('fuel-filter', 'A filter with no rated flow or nothing open passes nothing.')
    const medium = { ratedLoss, flow: pumped, ratedFlow, ratedViscosity, viscosity: fuelViscosityAt({ viscosity20, temperature }) }
    return { clean: filterLossOf({ ...medium, open: 1 }), loaded: filterLossOf({ ...medium, open }), face: faceSpeedOf({ flow: pumped, area }) }
  },
  says: () => 'At {pumped} the clean filter takes {clean}, with {open} of its area open {loaded}. Before the pump keep it to a few kilopascals, or fuel boils there; behind the pump it costs pump flow.',
  leavesOut: 'How soon a filter loads: that is the dirt in the tank. Ethanol loosens old deposits and loads the first filter quickly.',
})

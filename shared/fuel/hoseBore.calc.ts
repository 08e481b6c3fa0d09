import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { boreForSpeed } from './boreForSpeed.ts'
import { feedFittings, feedLength, roughness, runningTemperature, viscosity } from './fields.ts'
import { fuelViscosityAt } from './fuelViscosityAt.ts'
import { hoseBoreOf } from './hoseBoreOf.ts'
import { lineLossOf } from './lineLossOf.ts'
import { at } from './point.ts'
import { dashNumber, lineBore, linePressureLoss, lineSpeed } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

export default calculation({
  id: 'hose-bore',
  title: 'Hose bore',
  theme: 'fuel',
  asks: 'What bore does this flow want, and what does a hose of a dash size lose?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    flow: at.pumpFlow, wanted: free(lineSpeed, 2.5, 'Speed of flow not to pass'), dash: free(dashNumber, 6), length: feedLength, fittings: feedFittings, roughness,
    viscosity20: viscosity, temperature: runningTemperature, density: at.density,
  },
  out: { bore: role(lineBore, 'd_v', 'Bore that keeps to the speed'), hose: role(lineBore, 'd_h', 'Bore of the hose'), speed: lineSpeed, loss: linePressureLoss },
  curve: ['flow', 'loss'],
  answer({ flow, wanted, dash, length, fittings, roughness: wall, viscosity20, temperature, density }) {
    const hose = hoseBoreOf({ dash })
    if (Number.isNaN(hose)) throw new NoAnswer('hose-bore', 'There is no hose of this dash number: 3, 4, 5, 6, 8, 10, 12, 16, 20, 24 and 32 are sizes.')
    const { loss, speed } = lineLossOf({ flow, bore: hose, length, fittings, roughness: wall, density, viscosity: fuelViscosityAt({ viscosity20, temperature }) })
    return { bore: boreForSpeed({ flow, speed: wanted }), hose, speed, loss }
  },
  says: ({ bore, hose }) => hose < bore
    ? '{flow} wants a bore of {bore} to keep to {wanted}; this hose has {hose}, so it runs at {speed} and loses {loss}.'
    : '{flow} wants a bore of {bore} to keep to {wanted}; this hose has {hose}, runs at {speed} and loses {loss}.',
  leavesOut: 'Fittings that are narrower than the hose, and its bend radius.',
})

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelDensity, fuelFlow, premixOilDensity, premixOilFlow, premixShare } from './quantities.ts'

/** Mass of oil that the fuel carries into the chambers. */
export const about = {
  name: 'Oil carried by the fuel',
  in: { fuelFlow: role(fuelFlow, 'm_f', 'Mass flow of fuel and oil together'), share: premixShare, oilDensity: premixOilDensity, fuelDensity },
  out: premixOilFlow,
  equation: 'fuelFlow * share * oilDensity / (fuelDensity + share * oilDensity)',
  source: ['definition', 'a share by volume of the fuel turned into a share by mass of fuel and oil, which is what is burned'],
  notes: 'All of it goes through the chamber; how much stays on the seals is not known. In fuel cut there is none.',
} as const satisfies About

export const premixOilFlowOf = formula<typeof about>('premix-oil-flow-of', {}, ({ fuelFlow: flow, share, oilDensity, fuelDensity: density }) => (flow * share * oilDensity) / (density + share * oilDensity))

import { calculation } from '../calculation/calculation.ts'
import { premix, premixDensity } from './fields.ts'
import { at } from './point.ts'
import { premixOilFlowOf } from './premixOilFlowOf.ts'

export default calculation({
  id: 'premix-oil',
  title: 'Oil carried by premixed fuel',
  theme: 'fuel',
  asks: 'How much oil does premixed fuel carry into the chambers?',
  article: 'metered-premixed-or-both',
  cautions: ['fuel-additives-skin', 'fuel-vapour', 'emission-law', 'model-only'],
  in: { fuelFlow: at.fuelMassFlow, share: premix, oilDensity: premixDensity, density: at.density },
  out: { oil: at.premixOilFlow },
  curve: ['share', 'oil'],
  answer: ({ fuelFlow, share, oilDensity, density }) => ({ oil: premixOilFlowOf({ fuelFlow, share, oilDensity, fuelDensity: density }) }),
  says: () => 'At {fuelFlow} of fuel an oil share of {share} carries {oil} into the chambers. In fuel cut it carries none.',
  leavesOut: 'How much of it stays on the seals: no published figure exists.',
})

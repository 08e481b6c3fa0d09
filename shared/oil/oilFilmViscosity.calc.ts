import { calculation, NoAnswer, optional } from '../calculation/calculation.ts'
import { density15, fuelInOil, grade, highShear, index, viscosity100, viscosity40 } from './fields.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { oilInSump } from './oilInSump.ts'
import { at } from './point.ts'

export default calculation({
  id: 'oil-film-viscosity', title: 'Viscosity that the bearings get', theme: 'oil',
  asks: 'How thick is the oil in a fast film, hot and with fuel in it?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'waste-oil', 'model-only'],
  in: {
    grade, own40: optional(viscosity40), own100: optional(viscosity100), ownHighShear: optional(highShear), index, density15, dilution: fuelInOil, temperature: at.oilTemperature,
  },
  out: { viscosity: at.viscosity, viscosity40: at.viscosity40, viscosity100: at.viscosity100, share: at.highShearShare },
  curve: ['dilution', 'viscosity'],
  answer({ temperature, ...oil }) {
    const { viscosity40, viscosity100, share } = oilInSump(oil)
    if (!(viscosity100 < viscosity40)) throw new NoAnswer('oil', 'The oil comes out thicker at 100 °C than at 40 °C: one of its two viscosities does not belong to it.')
    return { viscosity: filmAtTemperature({ viscosity40, viscosity100, density15: oil.density15, share, temperature }), viscosity40, viscosity100, share }
  },
  says: ({ own100, dilution }) => `At {temperature} the film has {viscosity}, {share} of it left after shear${dilution > 0 ? ' and with {dilution} fuel in it' : ''}.${own100 === null ? ' Only the grade is known, so this is the thinnest oil that may carry it.' : ''}`,
  leavesOut: 'Ageing: shear of thickeners for good, soot and oxidation.',
})

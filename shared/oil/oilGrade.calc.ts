import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { filmAtTemperature } from './filmAtTemperature.ts'
import { density15, grade, index } from './fields.ts'
import { gradeLimits } from './gradeLimits.ts'
import { highShearShareOf } from './highShearShareOf.ts'
import { at } from './point.ts'
import { dynamicViscosity, highShearViscosity, viscosityAt100, viscosityIndex } from './quantities.ts'
import { viscosity40ByIndex } from './viscosity40ByIndex.ts'
import { viscosityAt150 } from './viscosityAt150.ts'

export default calculation({
  id: 'oil-grade', title: 'What a grade promises', theme: 'oil',
  asks: 'Between which viscosities can an oil of this grade lie?',
  article: 'grade-temperature-and-clearance', cautions: ['hot-oil', 'model-only'],
  in: { grade, index, density15, temperature: at.oilTemperature, flatter: free(viscosityIndex, 170, 'Index of a flatter oil') },
  out: { least: role(viscosityAt100, 'ν_min', 'Least viscosity at 100 °C'), most: role(viscosityAt100, 'ν_max', 'Most viscosity at 100 °C'), highShear: highShearViscosity, thin: role(dynamicViscosity, 'η_min', 'Thinnest at this temperature'), thick: role(dynamicViscosity, 'η_max', 'Thickest at this temperature') },
  curve: ['temperature', 'thin'],
  answer({ grade, index, density15, temperature, flatter }) {
    const { least, most, highShear } = gradeLimits({ grade })
    if (Number.isNaN(most)) throw new NoAnswer('oil grade', `${grade} is a winter grade alone: it sets a least viscosity at 100 °C and no more.`)
    const thinnest = { viscosity40: viscosity40ByIndex({ viscosity100: least, index }), viscosity100: least, density15 }
    const thin = filmAtTemperature({ ...thinnest, share: highShearShareOf({ highShear, lowShear: viscosityAt150(thinnest) }), temperature })
    // The thickest oil of the grade loses nothing to shear.
    const thick = filmAtTemperature({ viscosity40: viscosity40ByIndex({ viscosity100: most, index: flatter }), viscosity100: most, density15, share: 1, temperature })
    return { least, most, highShear, thin, thick }
  },
  says: () => '{grade} lies from {least} to {most} at 100 °C and keeps {highShear} at high shear. At {temperature} a film can have anything from {thin} to {thick}: the data sheet settles it.',
  leavesOut: 'Everything that a grade does not speak of: wear, foam, oxidation, friction.',
})

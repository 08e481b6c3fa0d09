import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { dilutedViscosity } from './dilutedViscosity.ts'
import { hotGradeOf } from './hotGradeOf.ts'
import { blendShare, dilution, hotGrade, kinematicViscosity, viscosityAt100, viscosityAt40, viscosityIndex } from './quantities.ts'
import { refutasMix } from './refutasMix.ts'
import { refutasNumber } from './refutasNumber.ts'
import { refutasViscosity } from './refutasViscosity.ts'
import { viscosityIndexOf } from './viscosityIndexOf.ts'
import { waltherBlend } from './waltherBlend.ts'

export default calculation({
  id: 'oil-blend', title: 'Two oils poured together, and fuel in them', theme: 'oil',
  asks: 'How thick is a mixture of two oils, and what does fuel make of it?',
  article: 'street-oil-track-oil', cautions: ['waste-oil', 'model-only'],
  in: {
    share: free(blendShare, 0.5), first40: free(viscosityAt40, 90e-6, 'First oil at 40 °C'), first100: free(viscosityAt100, 14e-6, 'First oil at 100 °C'),
    second40: free(viscosityAt40, 150e-6, 'Second oil at 40 °C'), second100: free(viscosityAt100, 18e-6, 'Second oil at 100 °C'), fuel: free(dilution, 0.03),
  },
  out: { viscosity40: role(kinematicViscosity, 'ν_40', 'Blend at 40 °C'), viscosity100: role(kinematicViscosity, 'ν_100', 'Blend at 100 °C'), other100: role(kinematicViscosity, 'ν_100b', 'Blend at 100 °C by the other rule'), fuelled40: role(kinematicViscosity, 'ν_40f', 'With fuel in it, at 40 °C'), fuelled100: role(kinematicViscosity, 'ν_100f', 'With fuel in it, at 100 °C'), index: viscosityIndex, grades: hotGrade },
  curve: ['fuel', 'fuelled100'],
  mayLack: ['grades'],
  answer({ share, first40, first100, second40, second100, fuel }) {
    if (!(first40 > first100 && second40 > second100)) throw new NoAnswer('oil', 'Each oil must be thicker at 40 °C than at 100 °C.')
    const viscosity40 = waltherBlend({ share, viscosity1: first40, viscosity2: second40 })
    const viscosity100 = waltherBlend({ share, viscosity1: first100, viscosity2: second100 })
    const other100 = refutasViscosity({ number: refutasMix({ share, number1: refutasNumber({ viscosity: first100 }), number2: refutasNumber({ viscosity: second100 }) }) })
    const fuelled = dilutedViscosity({ share: fuel, viscosity40, viscosity100 })
    return { viscosity40, viscosity100, other100, fuelled40: fuelled.viscosity40, fuelled100: fuelled.viscosity100, index: viscosityIndexOf({ viscosity40, viscosity100 }), grades: hotGradeOf({ viscosity100 }) }
  },
  says: ({ grades }) => `Together they have {viscosity100} at 100 °C, {other100} by another rule: ${Number.isNaN(grades) ? 'no grade' : 'by that alone an SAE {grades}'}; with {fuel} fuel in it {fuelled100} is left. The fuel part is an extrapolation.`,
  leavesOut: 'Whether the additives of the two go together: ask the supplier.',
})

import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { indexReferences } from './indexReferences.ts'
import { indexReference, viscosityAt100, viscosityAt40, viscosityIndex } from './quantities.ts'
import { viscosityIndexOf } from './viscosityIndexOf.ts'

export default calculation({
  id: 'viscosity-index', title: 'Viscosity index', theme: 'oil',
  asks: 'How flat is this oil’s viscosity over temperature?',
  article: 'grade-temperature-and-clearance', cautions: ['model-only'],
  in: { viscosity40: free(viscosityAt40, 90e-6), viscosity100: free(viscosityAt100, 14e-6) },
  out: { index: viscosityIndex, low: role(indexReference, 'L', 'L: an oil of index 0'), high: role(indexReference, 'H', 'H: an oil of index 100') },
  curve: ['viscosity40', 'index'],
  answer({ viscosity40, viscosity100 }) {
    const { low, high } = indexReferences({ viscosity100 })
    return { index: viscosityIndexOf({ viscosity40, viscosity100 }), low, high }
  },
  says: ({ index }) => (index > 120
    ? 'An index of {index}: flat, as thickened or synthetic oils are. The flatness of a thickener is partly lost in a fast film.'
    : 'An index of {index}: about as a plain mineral oil.'),
  leavesOut: 'Where the flatness comes from: base oil keeps it, thickeners lose some with use.',
})

import { formula, type About } from '../formula/formula.ts'
import { indexReferences } from './indexReferences.ts'
import { viscosityAt100, viscosityAt40, viscosityIndex } from './quantities.ts'

/** Viscosity at 40 °C of an oil known by its index and its viscosity at 100 °C: the two procedures turned round. */
export const about = {
  name: 'Viscosity at 40 °C from the index',
  in: { viscosity100: viscosityAt100, index: viscosityIndex },
  out: viscosityAt40,
  steps: ['Find the two reference oils that have the same viscosity at 100 °C.', 'Index up to 100: straight between them.', 'Above 100: procedure B solved for the viscosity at 40 °C.'],
  source: ['astm-d2270', 'procedures A and B, solved for the viscosity at 40 °C'],
} as const satisfies About

export const viscosity40ByIndex = formula<typeof about>('viscosity40-by-index', { viscosity100: [2e-6, 2e-3] }, ({ viscosity100, index }) => {
  const { low, high } = indexReferences({ viscosity100 })
  if (index <= 100) return low - (index / 100) * (low - high)
  return high / (viscosity100 * 1e6) ** Math.log10(1 + 0.00715 * (index - 100))
})

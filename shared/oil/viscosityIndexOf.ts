import { formula, type About } from '../formula/formula.ts'
import { indexAbove100 } from './indexAbove100.ts'
import { indexReferences } from './indexReferences.ts'
import { indexUpTo100 } from './indexUpTo100.ts'
import { viscosityAt100, viscosityAt40, viscosityIndex } from './quantities.ts'

/** Viscosity index of an oil from its two standard viscosities. */
export const about = {
  name: 'Viscosity index',
  in: { viscosity40: viscosityAt40, viscosity100: viscosityAt100 },
  out: viscosityIndex,
  steps: ['Find the two reference oils that have the same viscosity at 100 °C.', 'At 40 °C thicker than the better one: procedure A.', 'Thinner: procedure B.'],
  source: ['astm-d2270', 'procedures A and B'],
} as const satisfies About

export const viscosityIndexOf = formula<typeof about>('viscosity-index-of', { viscosity100: [2e-6, 2e-3] }, ({ viscosity40, viscosity100 }) => {
  const { low, high } = indexReferences({ viscosity100 })
  return viscosity40 >= high ? indexUpTo100({ viscosity40, low, high }) : indexAbove100({ viscosity40, viscosity100, high })
})

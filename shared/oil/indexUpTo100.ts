import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { indexReference, viscosityAt40, viscosityIndex } from './quantities.ts'

/** Viscosity index of an oil no flatter than the better reference oil (procedure A). */
export const about = {
  name: 'Viscosity index up to 100',
  in: { viscosity40: viscosityAt40, low: role(indexReference, 'L', 'Reference of index 0'), high: role(indexReference, 'H', 'Reference of index 100') },
  out: viscosityIndex,
  equation: '100 * (low - viscosity40) / (low - high)',
  sample: { low: [400e-6, 800e-6], high: [100e-6, 300e-6] },
  source: ['astm-d2270', 'procedure A'],
  notes: 'The standard rounds the result to a whole number.',
} as const satisfies About

export const indexUpTo100 = formula<typeof about>('index-up-to-100', {}, ({ viscosity40, low, high }) => (100 * (low - viscosity40)) / (low - high))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { indexReference, viscosityAt100, viscosityAt40, viscosityIndex } from './quantities.ts'

/** Viscosity index of an oil flatter than the better reference oil (procedure B). */
export const about = {
  name: 'Viscosity index above 100',
  in: { viscosity40: viscosityAt40, viscosity100: viscosityAt100, high: role(indexReference, 'H', 'Reference of index 100') },
  out: viscosityIndex,
  equation: '100 + (10^(log10(high / viscosity40) / log10(viscosity100)) - 1) / 0.00715',
  units: { viscosity40: 'mm²/s', viscosity100: 'mm²/s', high: 'mm²/s' },
  sample: { high: [100e-6, 300e-6], viscosity40: [30e-6, 100e-6] },
  source: ['astm-d2270', 'procedure B'],
  notes: 'The standard rounds the result to a whole number.',
} as const satisfies About

export const indexAbove100 = formula<typeof about>('index-above-100', {}, ({ viscosity40, viscosity100, high }) =>
  100 + (10 ** (Math.log10(high / viscosity40) / Math.log10(viscosity100 * 1e6)) - 1) / 0.00715)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { indexReference, viscosityAt100 } from './quantities.ts'

/** The same for oils of 70 mm²/s and more at 100 °C. */
export const about = {
  name: 'Reference viscosities of the index, very thick oils',
  in: { viscosity100: viscosityAt100 },
  out: { low: role(indexReference, 'L', 'Reference of index 0'), high: role(indexReference, 'H', 'Reference of index 100') },
  equation: { low: '0.8353 * viscosity100^2 + 14.67 * viscosity100 - 216', high: '0.1684 * viscosity100^2 + 11.85 * viscosity100 - 97' },
  units: { viscosity100: 'mm²/s', low: 'mm²/s', high: 'mm²/s' },
  source: ['astm-d2270', 'equations for viscosities above 70 mm²/s at 100 °C'],
} as const satisfies About

export const indexPolynomial = formula<typeof about>('index-polynomial', { viscosity100: [70e-6, 2e-3] }, ({ viscosity100 }) => {
  const nu = viscosity100 * 1e6
  return { low: (0.8353 * nu * nu + 14.67 * nu - 216) * 1e-6, high: (0.1684 * nu * nu + 11.85 * nu - 97) * 1e-6 }
})

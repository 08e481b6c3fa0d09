import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { indexPolynomial } from './indexPolynomial.ts'
import { indexTable } from './indexTable.ts'
import { indexReference, viscosityAt100 } from './quantities.ts'

/** Viscosities at 40 °C of the two reference oils, table or equation as the oil is thin or thick. */
export const about = {
  name: 'Reference viscosities of the index',
  in: { viscosity100: viscosityAt100 },
  out: { low: role(indexReference, 'L', 'Reference of index 0'), high: role(indexReference, 'H', 'Reference of index 100') },
  steps: ['Up to 70 mm²/s at 100 °C read the table.', 'Above that use the two equations.'],
  source: ['astm-d2270', 'table 1 and the equations after it'],
} as const satisfies About

export const indexReferences = formula<typeof about>('index-references', {},
  ({ viscosity100 }) => (viscosity100 <= 70e-6 ? indexTable({ viscosity100 }) : indexPolynomial({ viscosity100 })))

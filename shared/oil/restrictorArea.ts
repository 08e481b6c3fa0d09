import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { jetDiameter, openArea } from './quantities.ts'

/** Area of one round restrictor. */
export const about = {
  name: 'Area of a restrictor',
  in: { restrictor: role(jetDiameter, 'd_t', 'Restrictor') },
  out: openArea,
  equation: 'pi / 4 * restrictor^2',
  source: ['derived', 'area of a circle'],
} as const satisfies About

export const restrictorArea = formula<typeof about>('restrictor-area', {}, ({ restrictor }) => (Math.PI / 4) * restrictor * restrictor)

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bendRadius, bendReserveOf } from './quantities.ts'

/** How much wider the tightest bend is than the hose demands. */
export const about = {
  name: 'Reserve of a bend',
  in: { radius: bendRadius, least: role(bendRadius, 'r_min', 'Least radius of the hose') },
  out: bendReserveOf,
  equation: 'radius / least - 1',
  source: ['definition', 'a relative difference'],
} as const satisfies About

export const bendReserve = formula<typeof about>('bend-reserve', {}, ({ radius, least }) => radius / least - 1)

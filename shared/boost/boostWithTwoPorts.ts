import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { actuatorPressure, keptShare } from './quantities.ts'

/** Boost at which an actuator with boost on its opening side moves while part of the boost also stands on its closing side. */
export const about = {
  name: 'Boost with two ports controlled',
  in: { pressure: actuatorPressure, closing: role(keptShare, 'c_2', 'Share of boost on the closing side'), areaRatio: role(keptShare, 'a_2', 'Closing area over opening area') },
  out: role(actuatorPressure, 'p_b2', 'Boost with two ports'),
  equation: 'pressure / (1 - closing * areaRatio)',
  source: ['derived', 'balance of forces: boost on the full area below, a share of it on the area above less the rod'],
} as const satisfies About

export const boostWithTwoPorts = formula<typeof about>('boost-with-two-ports', {}, ({ pressure, closing, areaRatio }) => pressure / (1 - closing * areaRatio))

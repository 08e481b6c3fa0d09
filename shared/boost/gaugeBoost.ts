import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boostPressure } from '../engine/quantities.ts'
import { gasPressure } from './quantities.ts'

/** Boost as a gauge shows it. */
export const about = {
  name: 'Boost on the gauge',
  in: { manifold: role(gasPressure, 'p_m', 'Manifold pressure'), outside: role(gasPressure, 'p_0', 'Air pressure outside') },
  out: boostPressure,
  equation: 'manifold - outside',
  source: ['definition', 'gauge pressure is absolute pressure less that of the air outside'],
} as const satisfies About

export const gaugeBoost = formula<typeof about>('gauge-boost', {}, ({ manifold, outside }) => manifold - outside)

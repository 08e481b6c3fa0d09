import { formula, type About } from '../formula/formula.ts'
import { boostPressure, manifoldPressure } from '../engine/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure } from './quantities.ts'

/** Absolute manifold pressure at a boost on the gauge. */
export const about = {
  name: 'Manifold pressure at a boost',
  in: { boost: boostPressure, outside: role(gasPressure, 'p_0', 'Pressure outside') },
  out: manifoldPressure,
  equation: 'outside + boost',
  source: ['definition', 'gauge pressure counts from the air outside'],
} as const satisfies About

export const manifoldAtBoost = formula<typeof about>('manifold-at-boost', {}, ({ boost, outside }) => outside + boost)

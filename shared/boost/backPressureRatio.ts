import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { backPressureRatio as ratio } from '../engine/quantities.ts'
import { gasPressure } from './quantities.ts'

/** Pressure before the turbine over pressure in the manifold, both absolute. */
export const about = {
  name: 'Back-pressure ratio',
  in: { turbineInlet: role(gasPressure, 'p_3', 'Pressure before the turbine'), manifold: role(gasPressure, 'p_m', 'Manifold pressure') },
  out: ratio,
  equation: 'turbineInlet / manifold',
  source: ['definition', 'absolute pressures'],
} as const satisfies About

export const backPressureRatio = formula<typeof about>('boost-back-pressure-ratio', {}, ({ turbineInlet, manifold }) => turbineInlet / manifold)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { linePressureLoss, vapourPressure } from './quantities.ts'

/** What is left between the pressure in the rail and that at which the fuel boils. */
export const about = {
  name: 'Reserve against boiling',
  in: { held: role(vapourPressure, 'p_abs', 'Absolute pressure in the rail'), vapour: vapourPressure },
  out: role(linePressureLoss, 'Δp_v', 'Reserve against boiling'),
  equation: 'held - vapour',
  source: ['definition', 'fuel boils where its vapour pressure passes the pressure on it'],
} as const satisfies About

export const vapourReserveOf = formula<typeof about>('vapour-reserve-of', {}, ({ held, vapour }) => held - vapour)

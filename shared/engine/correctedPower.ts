import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { power, powerCorrection } from './quantities.ts'

/** Measured power as it would be in standard air. */
export const about = {
  name: 'Corrected power',
  in: { power, factor: powerCorrection },
  out: role(power, 'P_c', 'Corrected power'),
  equation: 'power * factor',
  source: ['sae-j1349', 'corrected power is observed power times the factor'],
} as const satisfies About

export const correctedPower = formula<typeof about>('corrected-power', {}, ({ power: measured, factor }) => measured * factor)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fillingShare, volumetricEfficiency } from './quantities.ts'

/** Share of the filling that back-pressure takes. */
export const about = {
  name: 'Filling lost to back-pressure',
  in: { reference: role(volumetricEfficiency, 'η_v0', 'Volumetric efficiency at the reference'), ve: volumetricEfficiency },
  out: fillingShare,
  equation: '1 - ve / reference',
  source: ['definition', 'share of what there was'],
  notes: 'Negative where back-pressure is lower than at the reference.',
} as const satisfies About

export const fillingLost = formula<typeof about>('filling-lost', {}, ({ reference, ve }) => 1 - ve / reference)

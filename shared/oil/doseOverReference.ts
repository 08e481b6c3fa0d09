import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { sealDose, sealDoseRatio } from './quantities.ts'

/** Dose as a multiple of a chosen reference. */
export const about = {
  name: 'Dose over reference',
  in: { dose: sealDose, reference: role(sealDose, 'm_ref', 'Reference dose') },
  out: sealDoseRatio,
  equation: 'dose / reference',
  sample: { reference: [0.1e-6, 20e-6] },
  source: ['definition', 'a ratio; no published requirement of the seals exists'],
} as const satisfies About

export const doseOverReference = formula<typeof about>('dose-over-reference', {}, ({ dose, reference }) => dose / reference)

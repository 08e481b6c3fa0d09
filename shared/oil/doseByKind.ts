import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { sealDose, sealOiling } from './quantities.ts'

/** Dose that the seals get by the way in which they are oiled. */
export const about = {
  name: 'Oil dose of the seals',
  in: { by: sealOiling, metered: role(sealDose, 'm_m', 'By the metering pump'), premixed: role(sealDose, 'm_p', 'By premix') },
  out: sealDose,
  steps: ['Metering pump alone: its dose.', 'Premix alone: its dose.', 'Both: their sum.'],
  source: ['definition', 'doses add'],
} as const satisfies About

export const doseByKind = formula<typeof about>('dose-by-kind', {}, ({ by, metered, premixed }) =>
  by === 'metered' ? metered : by === 'premixed' ? premixed : metered + premixed)

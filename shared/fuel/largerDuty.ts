import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dutyCycle } from './quantities.ts'

/** Duty of the stage that is open longest. */
export const about = {
  name: 'Duty of the busier stage',
  in: { primary: role(dutyCycle, 'D_1', 'Duty of a primary'), secondary: role(dutyCycle, 'D_2', 'Duty of a secondary') },
  out: dutyCycle,
  equation: 'max(primary, secondary)',
  source: ['definition', 'the larger of two'],
  sample: { primary: [0.01, 1.5], secondary: [0.01, 1.5] },
} as const satisfies About

export const largerDuty = formula<typeof about>('larger-duty', {}, ({ primary, secondary }) => Math.max(primary, secondary))

import { formula, type About } from '../formula/formula.ts'
import { alternatorCurrent, outputShare } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Current that the alternator gives hot. `I_a y`, amperes. */
export const about = {
  name: 'Current of the hot alternator',
  in: { rated: role(alternatorCurrent, 'I_0', 'Current by the curve'), share: outputShare },
  out: alternatorCurrent,
  equation: 'rated * share',
  source: ['definition', 'share of the rated current'],
} as const satisfies About

export const alternatorOutput = formula<typeof about>('alternator-output', {}, ({ rated, share }) => rated * share)

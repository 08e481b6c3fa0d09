import { formula, type About } from '../formula/formula.ts'
import { bearingLength, journalDiameter, slenderness } from './quantities.ts'

/** Length over diameter of a bearing. */
export const about = {
  name: 'Length over diameter',
  in: { length: bearingLength, diameter: journalDiameter },
  out: slenderness,
  equation: 'length / diameter',
  source: ['definition', 'l/d'],
} as const satisfies About

export const slendernessOf = formula<typeof about>('slenderness-of', {}, ({ length, diameter }) => length / diameter)

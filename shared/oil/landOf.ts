import { formula, type About } from '../formula/formula.ts'
import { bearingLength, landLength } from './quantities.ts'

/** Land beside a narrow groove in the middle of a bearing. */
export const about = {
  name: 'Land beside the groove',
  in: { length: bearingLength },
  out: landLength,
  equation: 'length / 2',
  source: ['definition', 'groove in the middle, its own width left out'],
} as const satisfies About

export const landOf = formula<typeof about>('land-of', {}, ({ length }) => length / 2)

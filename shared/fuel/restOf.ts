import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { tankVolume } from './quantities.ts'

/** What is left of a volume. */
export const about = {
  name: 'Rest of a volume',
  in: { total: role(tankVolume, 'V', 'Volume in all'), part: role(tankVolume, 'V_1', 'Part that is taken') },
  out: role(tankVolume, 'V_2', 'Rest'),
  equation: 'total - part',
  source: ['definition', 'a difference'],
} as const satisfies About

export const restOf = formula<typeof about>('rest-of', {}, ({ total, part }) => total - part)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { surfaceRoughness } from './quantities.ts'

/** Roughness of journal and shell together. */
export const about = {
  name: 'Roughness of both surfaces',
  in: { journal: role(surfaceRoughness, 'R_j', 'Journal roughness'), shell: role(surfaceRoughness, 'R_b', 'Shell roughness') },
  out: role(surfaceRoughness, 'R', 'Roughness of both surfaces'),
  equation: 'sqrt(journal^2 + shell^2)',
  source: ['hamrock-films', 'root of the sum of squares, root-mean-square heights'],
} as const satisfies About

export const compositeRoughness = formula<typeof about>('composite-roughness', {}, ({ journal, shell }) => Math.sqrt(journal * journal + shell * shell))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bearingSpeed } from './quantities.ts'

/** The speed that makes friction: how fast journal and shell slide past each other. */
export const about = {
  name: 'Sliding speed of a bearing',
  in: { journal: role(bearingSpeed, 'n_j', 'Journal speed'), shell: role(bearingSpeed, 'n_b', 'Shell speed') },
  out: role(bearingSpeed, 'n_s', 'Sliding speed'),
  equation: 'abs(journal - shell)',
  source: ['derived', 'difference of the two turning speeds'],
} as const satisfies About

export const slidingSpeed = formula<typeof about>('sliding-speed', {}, ({ journal, shell }) => Math.abs(journal - shell))

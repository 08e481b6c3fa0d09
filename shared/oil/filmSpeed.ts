import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bearingSpeed } from './quantities.ts'

/** The speed that makes a film: how fast journal and shell sweep oil into the place where the load presses. */
export const about = {
  name: 'Speed that makes the film',
  in: { journal: role(bearingSpeed, 'n_j', 'Journal speed'), shell: role(bearingSpeed, 'n_b', 'Shell speed'), load: role(bearingSpeed, 'n_L', 'Speed at which the load turns') },
  out: role(bearingSpeed, 'n_f', 'Speed that makes the film'),
  equation: 'abs(journal + shell - 2 * load)',
  source: ['shigley-bearings', 'section 12-5: effective speed |N_j + N_b − 2 N_f|'],
  notes: 'Signed by direction of turning. A load that turns at half the sum of both leaves no film.',
} as const satisfies About

export const filmSpeed = formula<typeof about>('film-speed', {}, ({ journal, shell, load }) => Math.abs(journal + shell - 2 * load))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { MPa } from '../quantity/si.ts'
import { discStress } from './quantities.ts'

/**
 * Peak stress beside a small round hole in a plate pulled in two directions: three times the larger pull less the smaller one.
 * `3 σ_t − σ_r`, pascals.
 */
export const about = {
  name: 'Peak stress at a bolt hole',
  in: { hoop: role(discStress, 'σ_t', 'Hoop stress at the bolt circle'), radial: role(discStress, 'σ_r', 'Radial stress at the bolt circle') },
  out: role(discStress, 'σ_p', 'Peak stress at a bolt hole'),
  equation: '3 * hoop - radial',
  source: ['timoshenko-goodier', 'article 35, small circular hole, two tensions'],
  notes: 'The hole is small against its distance from the edges and its neighbours. What the bolt itself presses is left out.',
  sample: { hoop: [MPa(20), MPa(400)], radial: [0, MPa(20)] },
} as const satisfies About

export const boltHoleStress = formula<typeof about>('bolt-hole-stress', {}, ({ hoop, radial }) => 3 * hoop - radial)

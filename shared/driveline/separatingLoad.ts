import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltPreload, jointLoad, loadFactorOf } from './quantities.ts'

/** Load at which the clamp is gone. `F_M / (1 − Φ)`, newtons. */
export const about = {
  name: 'Load at which the faces part',
  in: { preload: boltPreload, factor: loadFactorOf },
  out: role(jointLoad, 'F_0', 'Load at which the faces part'),
  equation: 'preload / (1 - factor)',
  source: ['shigley-machine-design', 'section 8-7, load factor against separation'],
} as const satisfies About

export const separatingLoad = formula<typeof about>('separating-load', {}, ({ preload, factor }) => preload / (1 - factor))

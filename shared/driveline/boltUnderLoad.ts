import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltPreload, jointLoad, loadFactorOf } from './quantities.ts'

/** Force in the bolt while a load pulls at the joint. `F_M + Φ F_A`, newtons. */
export const about = {
  name: 'Force in the bolt under a pulling load',
  in: { preload: boltPreload, load: jointLoad, factor: loadFactorOf },
  out: role(boltPreload, 'F_b', 'Force in the bolt'),
  equation: 'preload + factor * load',
  source: ['shigley-machine-design', 'section 8-7, equation 8-25'],
  notes: 'Until the faces part; beyond that the bolt takes all of the load.',
} as const satisfies About

export const boltUnderLoad = formula<typeof about>('bolt-under-load', {}, ({ preload, load, factor }) => preload + factor * load)

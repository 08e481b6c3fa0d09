import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltPreload, jointLoad, loadFactorOf, preloadChange } from './quantities.ts'

/** Clamp between the faces while a load pulls. `F_M − (1 − Φ) F_A`, newtons. */
export const about = {
  name: 'Clamp left under a pulling load',
  in: { preload: boltPreload, load: jointLoad, factor: loadFactorOf },
  out: role(preloadChange, 'F_k', 'Clamp left'),
  equation: 'preload - (1 - factor) * load',
  source: ['shigley-machine-design', 'section 8-7, equation 8-24'],
  notes: 'Below nothing the faces part, and the equation no longer holds.',
} as const satisfies About

export const clampUnderLoad = formula<typeof about>('clamp-under-load', {}, ({ preload, load, factor }) => preload - (1 - factor) * load)

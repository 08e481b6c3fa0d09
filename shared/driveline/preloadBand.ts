import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boltPreload, preloadScatter } from './quantities.ts'

/** Least and most preload that the same torque may have given. `F (1 ∓ s)`, newtons. */
export const about = {
  name: 'Band of preload',
  in: { preload: boltPreload, scatter: preloadScatter },
  out: { least: role(boltPreload, 'F_min', 'Least preload'), most: role(boltPreload, 'F_max', 'Most preload') },
  equation: { least: 'preload * (1 - scatter)', most: 'preload * (1 + scatter)' },
  source: ['nsts-08307', 'section 3.3, maximum and minimum preload'],
  notes: 'Scatter of tightening alone: settling and heat come on top.',
} as const satisfies About

export const preloadBand = formula<typeof about>('preload-band', {}, ({ preload, scatter }) => ({ least: preload * (1 - scatter), most: preload * (1 + scatter) }))

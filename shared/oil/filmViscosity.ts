import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dynamicViscosity, highShearShare } from './quantities.ts'

/** Viscosity in a fast bearing film. */
export const about = {
  name: 'Viscosity in the film',
  in: { lowShear: role(dynamicViscosity, 'η_0', 'Low-shear viscosity'), share: highShearShare },
  out: dynamicViscosity,
  equation: 'lowShear * share',
  source: ['derived', 'the low-shear line scaled to the high-shear value'],
} as const satisfies About

export const filmViscosity = formula<typeof about>('film-viscosity', {}, ({ lowShear, share }) => lowShear * share)

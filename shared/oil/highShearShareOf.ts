import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dynamicViscosity, highShearShare, highShearViscosity } from './quantities.ts'

/** How much of its low-shear viscosity an oil keeps in a fast film, never more than all. */
export const about = {
  name: 'Viscosity left at high shear',
  in: { highShear: highShearViscosity, lowShear: role(dynamicViscosity, 'η_150', 'Low-shear viscosity at 150 °C') },
  out: highShearShare,
  equation: 'min(1, highShear / lowShear)',
  source: ['definition', 'ratio of the two viscosities at 150 °C'],
  notes: 'Taken as the same at every temperature. A film shears near half a million per second, half as fast as the test: the true share is a little higher.',
} as const satisfies About

export const highShearShareOf = formula<typeof about>('high-shear-share-of', {}, ({ highShear, lowShear }) => Math.min(1, highShear / lowShear))

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dynamicViscosity, highShearViscosity, viscosityScale } from './quantities.ts'

/** High-shear viscosity of an oil that is a number of times thicker and loses the same share. */
export const about = {
  name: 'High-shear viscosity of a thicker oil',
  in: { viscosity: role(dynamicViscosity, 'η_150', 'High-shear viscosity now'), scale: viscosityScale },
  out: highShearViscosity,
  equation: 'viscosity * scale',
  source: ['definition', 'a multiple'],
} as const satisfies About

export const scaledHighShear = formula<typeof about>('scaled-high-shear', {}, ({ viscosity, scale }) => viscosity * scale)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { viscosityAt100, viscosityScale } from './quantities.ts'

/** Viscosity at 100 °C of an oil that is a number of times thicker. */
export const about = {
  name: 'Viscosity of a thicker oil',
  in: { viscosity: viscosityAt100, scale: viscosityScale },
  out: role(viscosityAt100, 'ν_w', 'Viscosity wanted at 100 °C'),
  equation: 'viscosity * scale',
  source: ['definition', 'a multiple'],
} as const satisfies About

export const scaledViscosity = formula<typeof about>('scaled-viscosity', {}, ({ viscosity, scale }) => viscosity * scale)

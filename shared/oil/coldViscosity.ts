import { type About, formula } from '../formula/formula.ts'
import { kinematicViscosity, oilDensity, pumpingViscosity } from './quantities.ts'

/** Dynamic viscosity that an oil's line gives in the cold. */
export const about = {
  name: 'Viscosity in the cold by the line',
  in: { viscosity: kinematicViscosity, density: oilDensity },
  out: pumpingViscosity,
  equation: 'viscosity * density',
  source: ['definition', 'kinematic viscosity is dynamic viscosity over density'],
  notes: 'The line lies well below what wax and thickeners make of the oil near its limit: the laboratory’s figure counts, this one compares oils.',
} as const satisfies About

export const coldViscosity = formula<typeof about>('cold-viscosity', {}, ({ viscosity, density }) => viscosity * density)

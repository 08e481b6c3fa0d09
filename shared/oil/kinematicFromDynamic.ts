import { type About, formula } from '../formula/formula.ts'
import { kinematicViscosity, oilDensity, pumpingViscosity } from './quantities.ts'

/** Kinematic viscosity of a dynamic one. */
export const about = {
  name: 'Kinematic viscosity from dynamic',
  in: { viscosity: pumpingViscosity, density: oilDensity },
  out: kinematicViscosity,
  equation: 'viscosity / density',
  source: ['definition', 'kinematic viscosity is dynamic viscosity over density'],
} as const satisfies About

export const kinematicFromDynamic = formula<typeof about>('kinematic-from-dynamic', {}, ({ viscosity, density }) => viscosity / density)

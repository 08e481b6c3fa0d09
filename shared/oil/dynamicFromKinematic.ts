import { formula, type About } from '../formula/formula.ts'
import { dynamicViscosity, kinematicViscosity, oilDensity } from './quantities.ts'

/** Dynamic viscosity: what shears in a film, from what flows in a tube. */
export const about = {
  name: 'Dynamic viscosity from kinematic',
  in: { viscosity: kinematicViscosity, density: oilDensity },
  out: dynamicViscosity,
  equation: 'viscosity * density',
  source: ['definition', 'kinematic viscosity is dynamic viscosity over density'],
} as const satisfies About

export const dynamicFromKinematic = formula<typeof about>('dynamic-from-kinematic', {}, ({ viscosity, density }) => viscosity * density)

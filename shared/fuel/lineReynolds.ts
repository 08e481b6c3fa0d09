import { formula, type About } from '../formula/formula.ts'
import { fuelDensity, fuelViscosity, lineBore, lineSpeed, pipeReynolds } from './quantities.ts'

/** Reynolds number of flow in a round line. */
export const about = {
  name: 'Reynolds number in a line',
  in: { density: fuelDensity, speed: lineSpeed, bore: lineBore, viscosity: fuelViscosity },
  out: pipeReynolds,
  equation: 'density * speed * bore / viscosity',
  source: ['definition', 'inertia over viscosity, on the bore'],
} as const satisfies About

export const lineReynolds = formula<typeof about>('line-reynolds', {}, ({ density, speed, bore, viscosity }) => (density * speed * bore) / viscosity)

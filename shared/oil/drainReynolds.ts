import { type About, formula } from '../formula/formula.ts'
import { drainBore, drainNumber, dynamicViscosity, oilDensity, oilFlow } from './quantities.ts'

/** Reynolds number in a half-full drain, on the bore. */
export const about = {
  name: 'Reynolds number of the drain',
  in: { flow: oilFlow, bore: drainBore, viscosity: dynamicViscosity, density: oilDensity },
  out: drainNumber,
  equation: '8 * density * flow / (pi * bore * viscosity)',
  source: ['white-fluid', 'hydraulic diameter of a half-full pipe is its bore'],
} as const satisfies About

export const drainReynolds = formula<typeof about>('drain-reynolds', {}, ({ flow, bore, viscosity, density }) => (8 * density * flow) / (Math.PI * bore * viscosity))

import { formula, type About } from '../formula/formula.ts'
import { pipeReynolds } from '../fuel/quantities.ts'
import { gasViscosity } from '../media/quantities.ts'
import { ductBore, gasFlow } from './quantities.ts'

/** Reynolds number of a gas in a round duct, from its mass flow. */
export const about = {
  name: 'Reynolds number in a duct',
  in: { flow: gasFlow, bore: ductBore, viscosity: gasViscosity },
  out: pipeReynolds,
  equation: '4 * flow / (pi * bore * viscosity)',
  source: ['definition', 'inertia over viscosity, on the bore'],
} as const satisfies About

export const ductReynolds = formula<typeof about>('duct-reynolds', {}, ({ flow, bore, viscosity }) => (4 * flow) / (Math.PI * bore * viscosity))

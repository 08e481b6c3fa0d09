import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelDensity, injectorFlow } from './quantities.ts'

/** Flow by volume of an injector with another fluid than the one it was rated with, at the same pressure. */
export const about = {
  name: 'Injector flow of another fluid',
  in: { flow: role(injectorFlow, 'Q_0', 'Flow of the rated fluid'), ratedDensity: role(fuelDensity, 'ρ_0', 'Density of the rated fluid'), density: fuelDensity },
  out: injectorFlow,
  equation: 'flow * sqrt(ratedDensity / density)',
  source: ['sae-j1832', 'flow by volume goes with one over the square root of density'],
  notes: 'Source states no range. Bernoulli through a fixed orifice: viscosity is taken to change nothing.',
} as const satisfies About

export const injectorFlowOfFluid = formula<typeof about>('injector-flow-of-fluid', {}, ({ flow, ratedDensity, density }) => flow * Math.sqrt(ratedDensity / density))

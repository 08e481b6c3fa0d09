import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelDensity, injectorFlow, injectorMassFlow, nozzleDrop } from './quantities.ts'

/** Rating, on the rated fluid at the rated pressure, of injectors that together pass a mass flow of fuel. */
export const about = {
  name: 'Rating for a mass flow',
  in: {
    massFlow: injectorMassFlow, density: fuelDensity, ratedDensity: role(fuelDensity, 'ρ_0', 'Density of the rated fluid'),
    drop: nozzleDrop, ratedDrop: role(nozzleDrop, 'Δp_0', 'Rated pressure'),
  },
  out: role(injectorFlow, 'Q_0', 'Rated flow'),
  equation: 'massFlow / density * sqrt(density / ratedDensity) * sqrt(ratedDrop / drop)',
  source: ['sae-j1832', 'flow goes with the square root of pressure and one over that of density'],
  notes: 'Source states no range. Divide by the number of injectors that share the work.',
} as const satisfies About

export const ratedFlowFor = formula<typeof about>('rated-flow-for', {}, ({ massFlow, density, ratedDensity, drop, ratedDrop }) =>
  (massFlow / density) * Math.sqrt(density / ratedDensity) * Math.sqrt(ratedDrop / drop))

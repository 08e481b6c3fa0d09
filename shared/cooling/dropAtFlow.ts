import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airDensity } from '../media/quantities.ts'
import { coreAir, coreDropOf, coreExponentOf } from './quantities.ts'


/** Pressure lost in a core at another flow and density. */
export const about = {
  name: 'Pressure lost in a core at another flow',
  in: { rated: role(coreDropOf, 'Δp_k0', 'Pressure lost at the rated flow'), air: coreAir, ratedAir: role(coreAir, 'm_k0', 'Rated air flow'), exponent: coreExponentOf, density: airDensity, ratedDensity: role(airDensity, 'ρ_0', 'Density at the rating') },
  out: coreDropOf,
  equation: 'rated * (air / ratedAir)^exponent * ratedDensity / density',
  source: ['common-practice', 'power of the mass flow; at equal mass flow twice the density loses half'],
} as const satisfies About

export const dropAtFlow = formula<typeof about>('drop-at-flow', {}, ({ rated, air, ratedAir, exponent, density, ratedDensity }) => (rated * (air / ratedAir) ** exponent * ratedDensity) / density)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airSpecificHeat } from '../formula/constants.ts'
import { airConductivityOf, airViscosityOf, colburnFactor, coreAir, coreFilm, coreFlowArea } from './quantities.ts'

/** Film of the air from its Colburn factor. `j G c_p Pr^(−2/3)`. */
export const about = {
  name: 'Heat transfer from the Colburn factor',
  in: { factor: colburnFactor, air: coreAir, area: coreFlowArea, viscosity: airViscosityOf, conductivity: airConductivityOf },
  out: role(coreFilm, 'h_a', 'Heat transfer on the air’s side'),
  constants: { airSpecificHeat },
  equation: 'factor * air / area * airSpecificHeat * (viscosity * airSpecificHeat / conductivity)^(-2 / 3)',
  source: ['kays-london', 'definition of the Colburn factor'],
} as const satisfies About

export const filmFromColburn = formula<typeof about>('film-from-colburn', {}, ({ factor, air, area, viscosity, conductivity }) => ((factor * air) / area) * airSpecificHeat.value * ((viscosity * airSpecificHeat.value) / conductivity) ** (-2 / 3))

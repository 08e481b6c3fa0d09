import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bearingPressure, bearingSpeed, oilDensity, oilRise, oilSpecificHeat, riseVariable } from './quantities.ts'

/** Warming of the oil on its way through a film that keeps all friction heat. */
export const about = {
  name: 'Temperature rise in a film',
  in: {
    variable: riseVariable, pressure: bearingPressure, density: oilDensity, specificHeat: oilSpecificHeat,
    filmSpeed: role(bearingSpeed, 'n_f', 'Speed that makes the film'), slidingSpeed: role(bearingSpeed, 'n_s', 'Sliding speed'),
  },
  out: oilRise,
  equation: 'variable * pressure / (density * specificHeat) * (slidingSpeed / filmSpeed)^2',
  sample: { filmSpeed: [10, 1500] },
  source: ['shigley-bearings', 'equation 12-15; friction torque and its power scaled by sliding over film speed'],
  notes: 'No heat leaves through journal and shell: it reads warm.',
} as const satisfies About

export const filmRise = formula<typeof about>('film-rise', {}, ({ variable, pressure, density, specificHeat, filmSpeed, slidingSpeed }) =>
  ((variable * pressure) / (density * specificHeat)) * (slidingSpeed / filmSpeed) ** 2)

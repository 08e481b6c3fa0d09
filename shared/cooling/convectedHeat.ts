import { formula, type About } from '../formula/formula.ts'
import { airTemperature } from '../engine/quantities.ts'
import { heatFlow, surfaceArea, surfaceFilm, surfaceTemperatureOf } from './quantities.ts'

/** Heat that moving or still air takes from a surface. */
export const about = {
  name: 'Heat convected',
  in: { surface: surfaceTemperatureOf, around: airTemperature, area: surfaceArea, film: surfaceFilm },
  out: heatFlow,
  equation: 'film * area * (surface - around)',
  source: ['incropera', 'equation 1.3a, Newton’s law of cooling'],
  sample: { surface: [400, 1300] },
} as const satisfies About

export const convectedHeat = formula<typeof about>('convected-heat', {}, ({ surface, around, area, film }) => film * area * (surface - around))

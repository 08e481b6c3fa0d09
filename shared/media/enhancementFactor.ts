import { formula, type About } from '../formula/formula.ts'
import { airPressure, airTemperature } from '../engine/quantities.ts'
import { enhancement } from './quantities.ts'

/** By how much air over water holds more vapour than a vacuum over water would. */
export const about = {
  name: 'Enhancement factor of moist air',
  in: { pressure: airPressure, temperature: airTemperature },
  out: enhancement,
  equation: '1.00062 + 3.14e-8 * pressure + 5.6e-7 * (temperature - 273.15)^2',
  units: { pressure: 'Pa', temperature: 'K' },
  source: ['cipm-2007', 'appendix A.1.2'],
} as const satisfies About

export const enhancementFactor = formula<typeof about>('enhancement-factor', { pressure: [60e3, 110e3], temperature: [288.15, 300.15] }, ({ pressure, temperature }) =>
  1.00062 + 3.14e-8 * pressure + 5.6e-7 * (temperature - 273.15) ** 2)

import { formula, type About } from '../formula/formula.ts'
import { airPressure, airTemperature } from '../engine/quantities.ts'
import { compressibility, vapourShareOfAir } from './quantities.ts'

/** How far moist air departs from the law of an ideal gas. */
export const about = {
  name: 'Compressibility factor of moist air',
  in: { pressure: airPressure, temperature: airTemperature, share: vapourShareOfAir },
  out: compressibility,
  equation: '1 - pressure / temperature * (1.58123e-6 - 2.9331e-8 * (temperature - 273.15) + 1.1043e-10 * (temperature - 273.15)^2 + (5.707e-6 - 2.051e-8 * (temperature - 273.15)) * share + (1.9898e-4 - 2.376e-6 * (temperature - 273.15)) * share^2) + (pressure / temperature)^2 * (1.83e-11 - 0.765e-8 * share^2)',
  units: { pressure: 'Pa', temperature: 'K' },
  source: ['cipm-2007', 'appendix A.1.4'],
  sample: { share: [0, 0.1] },
} as const satisfies About

export const airCompressibility = formula<typeof about>('air-compressibility', { pressure: [60e3, 110e3], temperature: [288.15, 300.15] }, ({ pressure, temperature, share }) => {
  const t = temperature - 273.15
  const ratio = pressure / temperature
  const first = 1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t + (5.707e-6 - 2.051e-8 * t) * share + (1.9898e-4 - 2.376e-6 * t) * share * share
  return 1 - ratio * first + ratio * ratio * (1.83e-11 - 0.765e-8 * share * share)
})

import { formula, type About } from '../formula/formula.ts'
import { airPressure, airTemperature } from '../engine/quantities.ts'
import { airMolarMass, gasConstant, waterMolarMass } from '../formula/constants.ts'
import { airDensity, compressibility, vapourShareOfAir } from './quantities.ts'

/** Law of a real gas for moist air, vapour included. */
export const about = {
  name: 'Density of moist air from its compressibility',
  in: { pressure: airPressure, temperature: airTemperature, share: vapourShareOfAir, compressibility },
  out: airDensity,
  equation: 'pressure * airMolarMass / (compressibility * gasConstant * temperature) * (1 - share * (1 - waterMolarMass / airMolarMass))',
  constants: { airMolarMass, gasConstant, waterMolarMass },
  source: ['cipm-2007', 'equation 1, carbon dioxide at 400 µmol/mol'],
  notes: 'Valid from 600 to 1100 hPa and 15 to 27 °C within 22 parts in a million; outside it is continued, within a few parts in ten thousand up to 45 °C. The gas constant is the exact one of the SI.',
} as const satisfies About

export const moistAirLaw = formula<typeof about>('moist-air-law', { pressure: [60e3, 110e3], temperature: [288.15, 300.15] }, ({ pressure, temperature, share, compressibility: z }) =>
  ((pressure * airMolarMass.value) / (z * gasConstant.value * temperature)) * (1 - share * (1 - waterMolarMass.value / airMolarMass.value)))

import { formula, type About } from '../formula/formula.ts'
import { airPressure, airTemperature } from '../engine/quantities.ts'
import { airCompressibility } from './airCompressibility.ts'
import { moistAirLaw } from './moistAirLaw.ts'
import { airDensity, vapourShareOfAir } from './quantities.ts'

/** Density of real moist air, vapour included, by CIPM-2007. */
export const about = {
  name: 'Density of moist air',
  in: { pressure: airPressure, temperature: airTemperature, share: vapourShareOfAir },
  out: airDensity,
  steps: ['Take the compressibility factor at this pressure, temperature and vapour share.', 'Put it into the law of a real gas with the molar masses of dry air and water.'],
  source: ['cipm-2007', 'equation 1 and appendix A'],
  notes: 'Valid from 600 to 1100 hPa and 15 to 27 °C within 22 parts in a million; outside it is continued, within a few parts in ten thousand up to 45 °C.',
} as const satisfies About

export const moistAirDensity = formula<typeof about>('moist-air-density', { pressure: [60e3, 110e3], temperature: [288.15, 300.15] }, ({ pressure, temperature, share }) =>
  moistAirLaw({ pressure, temperature, share, compressibility: airCompressibility({ pressure, temperature, share }) }))

import { formula, type About } from '../formula/formula.ts'
import { dryPressure } from '../media/quantities.ts'
import { airTemperature, powerCorrection } from './quantities.ts'

/** Factor from measured brake power to that in standard air of 25 °C and 99 kPa dry, by SAE J1349. */
export const about = {
  name: 'Power correction by SAE J1349',
  in: { dryPressure, temperature: airTemperature },
  out: powerCorrection,
  equation: '1.18 * (99 / dryPressure) * sqrt((temperature + 273) / 298) - 0.18',
  units: { dryPressure: 'kPa', temperature: '°C' },
  source: ['sae-j1349', 'spark ignition, mechanical efficiency taken as 85 %'],
  notes: 'Meant for factors between 0.93 and 1.07, at 15 to 35 °C and 90 to 105 kPa dry. Where a boost controller holds absolute manifold pressure, the engine has already made up for thin air and the factor says too much.',
  sample: { dryPressure: [55e3, 108e3] },
} as const satisfies About

export const saeCorrection = formula<typeof about>('sae-correction', { dryPressure: [90e3, 105e3], temperature: [288.15, 308.15] }, ({ dryPressure: dry, temperature }) =>
  1.18 * (99e3 / dry) * Math.sqrt((temperature - 273.15 + 273) / 298) - 0.18)

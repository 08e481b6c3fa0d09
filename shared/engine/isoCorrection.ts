import { formula, type About } from '../formula/formula.ts'
import { dryPressure } from '../media/quantities.ts'
import { airTemperature, powerCorrection } from './quantities.ts'

/** Factor from measured brake power to that in standard air of 25 °C and 99 kPa dry, by ISO 1585. */
export const about = {
  name: 'Power correction by ISO 1585',
  in: { dryPressure, temperature: airTemperature },
  out: powerCorrection,
  equation: '(99 / dryPressure)^1.2 * (temperature / 298)^0.6',
  units: { dryPressure: 'kPa', temperature: 'K' },
  source: ['iso-1585', 'spark-ignition engines, naturally aspirated and pressure-charged'],
  notes: 'Meant for factors between 0.93 and 1.07, at 288 to 308 K and 90 to 110 kPa dry. Where a boost controller holds absolute manifold pressure, the engine has already made up for thin air and the factor says too much.',
  sample: { dryPressure: [55e3, 108e3] },
} as const satisfies About

export const isoCorrection = formula<typeof about>('iso-correction', { dryPressure: [90e3, 110e3], temperature: [288, 308] }, ({ dryPressure: dry, temperature }) =>
  (99e3 / dry) ** 1.2 * (temperature / 298) ** 0.6)

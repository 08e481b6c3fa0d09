import { formula, type About } from '../formula/formula.ts'
import { airConductivityOf, coreAirTemperatureOf } from './quantities.ts'

/** Thermal conductivity of air over temperature. */
export const about = {
  name: 'Conductivity of air',
  in: { temperature: coreAirTemperatureOf },
  out: airConductivityOf,
  units: { temperature: 'K', out: 'W/(m K)' },
  equation: '0.002648151 * temperature^1.5 / (temperature + 245.4 * 10^(-12 / temperature))',
  source: ['iso-2533-transport', 'conductivity'],
} as const satisfies About

export const airConductivityAt = formula<typeof about>('air-conductivity-at', {}, ({ temperature }) => (2.648151e-3 * temperature ** 1.5) / (temperature + 245.4 * 10 ** (-12 / temperature)))

import { formula, type About } from '../formula/formula.ts'
import { airViscosityOf, coreAirTemperatureOf } from './quantities.ts'

/** Dynamic viscosity of air over temperature. */
export const about = {
  name: 'Viscosity of air',
  in: { temperature: coreAirTemperatureOf },
  out: airViscosityOf,
  units: { temperature: 'K', out: 'Pa s' },
  equation: '0.000001458 * temperature^1.5 / (temperature + 110.4)',
  source: ['iso-2533-transport', 'Sutherland’s equation'],
} as const satisfies About

export const airViscosityAt = formula<typeof about>('air-viscosity-at', {}, ({ temperature }) => (1.458e-6 * temperature ** 1.5) / (temperature + 110.4))

import { formula, type About } from '../formula/formula.ts'
import { gasTemperature } from '../boost/quantities.ts'
import { gasViscosity } from './quantities.ts'

/** Dynamic viscosity of air by Sutherland’s law. */
export const about = {
  name: 'Viscosity of air',
  in: { temperature: gasTemperature },
  out: gasViscosity,
  equation: '1.458e-6 * temperature^1.5 / (temperature + 110.4)',
  units: { temperature: 'K', out: 'Pa s' },
  source: ['iso-2533', 'section 2.12, dynamic viscosity'],
  notes: 'Source: from its lowest temperatures to those of 32 km. Exhaust gas lies within a tenth of it (Heywood 1988, section 4.8), which moves a pipe’s friction by 2 %.',
} as const satisfies About

export const airViscosity = formula<typeof about>('air-viscosity', {}, ({ temperature }) => (1.458e-6 * temperature ** 1.5) / (temperature + 110.4))

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { correctedSpeed, gasTemperature, turboSpeed } from './quantities.ts'

/** Shaft speed that a corrected speed of a map stands for. */
export const about = {
  name: 'Turbocharger speed from a corrected speed',
  in: { corrected: correctedSpeed, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), referenceTemperature: role(gasTemperature, 'T_ref', 'Reference temperature of the map') },
  out: turboSpeed,
  equation: 'corrected * sqrt(temperature / referenceTemperature)',
  source: ['cohen-gas-turbine', 'section on compressor characteristics: N/√T, turned round'],
  notes: 'Source states no range. A hot inlet asks more real speed for the same place on the map.',
} as const satisfies About

export const actualSpeed = formula<typeof about>('actual-speed', {}, ({ corrected, temperature, referenceTemperature }) => corrected * Math.sqrt(temperature / referenceTemperature))

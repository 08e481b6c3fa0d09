import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { correctedSpeed as corrected } from './quantities.ts'
import { gasTemperature, turboSpeed } from './quantities.ts'

/** Speed as a compressor map counts it: the speed with the same Mach numbers at the map’s reference temperature. */
export const about = {
  name: 'Corrected turbocharger speed',
  in: { speed: turboSpeed, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), referenceTemperature: role(gasTemperature, 'T_ref', 'Reference temperature of the map') },
  out: corrected,
  equation: 'speed * sqrt(referenceTemperature / temperature)',
  source: ['cohen-gas-turbine', 'section on compressor characteristics: N/√T'],
  notes: 'Source states no range. Same wheel, same gas.',
} as const satisfies About

export const correctedSpeed = formula<typeof about>('corrected-speed', {}, ({ speed, temperature, referenceTemperature }) => speed * Math.sqrt(referenceTemperature / temperature))

import { type About, formula } from '../formula/formula.ts'
import { fuelBulkModulus, fuelDensity, hoseSwelling, waveSpeed } from './quantities.ts'

/** Speed of a pressure wave in a liquid in a line that swells. */
export const about = {
  name: 'Wave speed in a line',
  in: { bulk: fuelBulkModulus, density: fuelDensity, swelling: hoseSwelling },
  out: waveSpeed,
  equation: 'sqrt(1 / (density * (1 / bulk + swelling)))',
  source: ['wylie-streeter', 'a = sqrt((K/ρ) / (1 + K D / (E e))), written with the swelling of the line (from memory)'],
} as const satisfies About

export const waveSpeedOf = formula<typeof about>('wave-speed-of', {}, ({ bulk, density, swelling }) => Math.sqrt(1 / (density * (1 / bulk + swelling))))

import { formula, type About } from '../formula/formula.ts'
import { airStandardEfficiency, fuelPowerIn, indicated, indicatedQuality, releasedShareOf } from './quantities.ts'

/** Power that the gas gives the rotors, before friction and pumping. */
export const about = {
  name: 'Indicated power',
  in: { fuelPower: fuelPowerIn, releasedShare: releasedShareOf, ottoEfficiency: airStandardEfficiency, quality: indicatedQuality },
  out: indicated,
  equation: 'fuelPower * releasedShare * ottoEfficiency * quality',
  source: ['common-practice', 'air-standard efficiency times a quality factor fitted to the engine'],
  notes: 'The quality holds leakage past the seals, heat lost to the walls, slow burning in the long chamber and real gas at once; it is fitted, not derived.',
} as const satisfies About

export const indicatedPower = formula<typeof about>('indicated-power', {}, ({ fuelPower, releasedShare, ottoEfficiency, quality }) => fuelPower * releasedShare * ottoEfficiency * quality)

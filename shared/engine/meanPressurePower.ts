import { formula, type About } from '../formula/formula.ts'
import { displacement, lostPower, meanPressure, rotors, shaftSpeed } from './quantities.ts'

/** Power of a mean pressure. The volume is one chamber per rotor and shaft turn: state it, or two numbers cannot be compared. */
export const about = {
  name: 'Power of a mean pressure',
  in: { meanPressure, displacement, rotors, speed: shaftSpeed },
  out: lostPower,
  equation: 'meanPressure * displacement * rotors * speed / (2 * pi)',
  source: ['yamamoto-1981', 'mean effective pressure: one working chamber per rotor in each turn of the shaft'],
  notes: 'Source states no range.',
} as const satisfies About

export const meanPressurePower = formula<typeof about>('mean-pressure-power', {}, ({ meanPressure: pressure, displacement: volume, rotors: count, speed }) => (pressure * volume * count * speed) / (2 * Math.PI))

import { formula, type About } from '../formula/formula.ts'
import { displacement, meanPressure, power, rotors, shaftSpeed } from './quantities.ts'

/** Mean pressure that would give this power on one chamber per rotor and shaft turn. */
export const about = {
  name: 'Mean effective pressure',
  in: { power, displacement, rotors, speed: shaftSpeed },
  out: meanPressure,
  equation: '2 * pi * power / (displacement * rotors * speed)',
  source: ['yamamoto-1981', 'mean effective pressure: one working chamber per rotor in each turn of the shaft'],
  notes: 'Source states no range. On the two-turn displacement, twice the chambers and half the cycles, the mean pressure is the same; whoever divides by the wrong volume is out by two.',
} as const satisfies About

export const meanEffectivePressure = formula<typeof about>('mean-effective-pressure', {}, ({ power: brake, displacement: volume, rotors: count, speed }) => (2 * Math.PI * brake) / (volume * count * speed))

import { formula, type About } from '../formula/formula.ts'
import { airDensity } from '../media/quantities.ts'
import { airFlow, displacement, rotors, shaftSpeed, volumetricEfficiency } from './quantities.ts'

/** Density in the manifold at which the engine takes in a wanted air flow. */
export const about = {
  name: 'Manifold density for an air flow',
  in: { airFlow, volumetricEfficiency, displacement, rotors, speed: shaftSpeed },
  out: airDensity,
  equation: '2 * pi * airFlow / (volumetricEfficiency * displacement * rotors * speed)',
  source: ['yamamoto-1981', 'intake process: one intake per rotor in each turn of the shaft, turned round'],
} as const satisfies About

export const densityForAir = formula<typeof about>('density-for-air', {}, ({ airFlow: air, volumetricEfficiency: filling, displacement: volume, rotors: count, speed }) =>
  (2 * Math.PI * air) / (filling * volume * count * speed))

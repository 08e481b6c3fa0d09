import { formula, type About } from '../formula/formula.ts'
import { airDensity } from '../media/quantities.ts'
import { airFlow, displacement, rotors, shaftSpeed, volumetricEfficiency } from './quantities.ts'

/** Air that the engine takes in: each rotor fills one chamber in every turn of the shaft. */
export const about = {
  name: 'Air mass flow of the engine',
  in: { volumetricEfficiency, density: airDensity, displacement, rotors, speed: shaftSpeed },
  out: airFlow,
  equation: 'volumetricEfficiency * density * displacement * rotors * speed / (2 * pi)',
  source: ['yamamoto-1981', 'intake process: one intake per rotor in each turn of the shaft'],
  notes: 'Source states no range. Volumetric efficiency is on one chamber per rotor and turn, at the density of the dry air in the manifold; on the two-turn displacement the same air reads the same share, on all six chambers over three turns too.',
} as const satisfies About

export const airMassFlow = formula<typeof about>('air-mass-flow', {}, ({ volumetricEfficiency: filling, density, displacement: volume, rotors: count, speed }) =>
  (filling * density * volume * count * speed) / (2 * Math.PI))

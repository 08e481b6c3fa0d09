import { formula, type About } from '../formula/formula.ts'
import { fuelFlow, fuelPerCharge as fuelPerChargeOf } from '../fuel/quantities.ts'
import { rotors, shaftSpeed } from './quantities.ts'

/** Fuel for one charge of one rotor: there is one in every turn of the shaft. */
export const about = {
  name: 'Fuel for one charge',
  in: { fuelFlow, rotors, speed: shaftSpeed },
  out: fuelPerChargeOf,
  equation: '2 * pi * fuelFlow / (rotors * speed)',
  source: ['yamamoto-1981', 'intake process: one intake per rotor in each turn of the shaft'],
  notes: 'Source states no range. A four-stroke piston engine has two turns for each charge; halving or doubling here is the classic slip.',
} as const satisfies About

export const fuelPerCharge = formula<typeof about>('fuel-per-charge', {}, ({ fuelFlow: flow, rotors: count, speed }) => (2 * Math.PI * flow) / (count * speed))

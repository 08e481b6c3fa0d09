import { formula, type About } from '../formula/formula.ts'
import { airFlow, ductArea, rotors } from '../engine/quantities.ts'
import { airDensity } from '../media/quantities.ts'
import { airSpeedInDuct } from './quantities.ts'

/** Mean speed of the air in the duct of one rotor. */
export const about = {
  name: 'Speed of the air in a duct',
  in: { air: airFlow, rotors, density: airDensity, area: ductArea },
  out: airSpeedInDuct,
  equation: 'air / (rotors * density * area)',
  source: ['definition', 'mass flow over density and area'],
  notes: 'A mean over the turn: the air stops and starts with the port.',
} as const satisfies About

export const airSpeedInDuctOf = formula<typeof about>('air-speed-in-duct-of', {}, ({ air, rotors: count, density, area }) => air / (count * density * area))

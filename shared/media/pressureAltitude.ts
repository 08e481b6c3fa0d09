import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airPressure } from '../engine/quantities.ts'
import { airGasConstant, standardGravity } from '../formula/constants.ts'
import { geopotentialAltitude } from './quantities.ts'

/** Height in the standard atmosphere that has this pressure. */
export const about = {
  name: 'Pressure altitude',
  in: { pressure: airPressure },
  out: role(geopotentialAltitude, 'H_p', 'Pressure altitude'),
  equation: '288.15 / 0.0065 * (1 - (pressure / 101325)^(0.0065 * airGasConstant / standardGravity))',
  units: { pressure: 'Pa', out: 'm' },
  constants: { standardGravity, airGasConstant },
  source: ['iso-2533', 'pressure of the troposphere, solved for altitude'],
} as const satisfies About

const exponent = (0.0065 * airGasConstant.value) / standardGravity.value

export const pressureAltitude = formula<typeof about>('pressure-altitude', { pressure: [22632, 127774] }, ({ pressure }) => (288.15 / 0.0065) * (1 - (pressure / 101325) ** exponent))

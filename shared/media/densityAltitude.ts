import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, standardGravity } from '../formula/constants.ts'
import { airDensity, densityAltitudeOf } from './quantities.ts'

/** Height in the standard atmosphere that has this density: the inverse of its density. */
export const about = {
  name: 'Density altitude',
  in: { density: airDensity },
  out: densityAltitudeOf,
  equation: '288.15 / 0.0065 * (1 - (density * airGasConstant * 288.15 / 101325)^(1 / (standardGravity / (0.0065 * airGasConstant) - 1)))',
  units: { density: 'kg/m³', out: 'm' },
  constants: { standardGravity, airGasConstant },
  source: ['iso-2533', 'density of the troposphere, solved for altitude'],
  notes: 'Damp air is lighter at the same pressure and so reads higher; the engine loses a little more than that, because vapour also displaces oxygen.',
} as const satisfies About

const seaDensity = 101325 / (airGasConstant.value * 288.15)
const exponent = 1 / (standardGravity.value / (0.0065 * airGasConstant.value) - 1)

export const densityAltitude = formula<typeof about>('density-altitude', { density: [0.36, 1.48] }, ({ density }) => (288.15 / 0.0065) * (1 - (density / seaDensity) ** exponent))

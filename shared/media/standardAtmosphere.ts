import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure, gasTemperature } from '../boost/quantities.ts'
import { airGasConstant, airHeatRatio, standardGravity } from '../formula/constants.ts'
import { airDensity, geopotentialAltitude, soundSpeed } from './quantities.ts'

/** The agreed average air at a height above the sea, up to 11 km. */
export const about = {
  name: 'Standard atmosphere',
  in: { altitude: geopotentialAltitude },
  out: { temperature: role(gasTemperature, 'T_s', 'Standard temperature'), pressure: role(gasPressure, 'p_s', 'Standard pressure'), density: role(airDensity, 'ρ_s', 'Standard density'), speedOfSound: soundSpeed },
  equation: {
    temperature: '288.15 - 0.0065 * altitude',
    pressure: '101325 * (1 - 0.0065 * altitude / 288.15)^(standardGravity / (0.0065 * airGasConstant))',
    density: '101325 * (1 - 0.0065 * altitude / 288.15)^(standardGravity / (0.0065 * airGasConstant)) / (airGasConstant * (288.15 - 0.0065 * altitude))',
    speedOfSound: 'sqrt(airHeatRatio * airGasConstant * (288.15 - 0.0065 * altitude))',
  },
  units: { altitude: 'm', temperature: 'K', pressure: 'Pa', density: 'kg/m³', speedOfSound: 'm/s' },
  constants: { standardGravity, airGasConstant, airHeatRatio },
  source: ['iso-2533', 'clause 2, troposphere'],
  notes: 'Dry air. Weather moves pressure by some 4 % and temperature by far more.',
} as const satisfies About

const sea = { temperature: 288.15, pressure: 101325 }
const lapse = 0.0065
const exponent = standardGravity.value / (lapse * airGasConstant.value)

export const standardAtmosphere = formula<typeof about>('standard-atmosphere', { altitude: [-2000, 11000] }, ({ altitude }) => {
  const temperature = sea.temperature - lapse * altitude
  const pressure = sea.pressure * (temperature / sea.temperature) ** exponent
  return { temperature, pressure, density: pressure / (airGasConstant.value * temperature), speedOfSound: Math.sqrt(airHeatRatio.value * airGasConstant.value * temperature) }
})

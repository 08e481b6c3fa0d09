import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { degC } from '../quantity/si.ts'
import { fuelTemperature, fuelViscosity } from './quantities.ts'

/** Dynamic viscosity of petrol at a temperature, from its viscosity at 20 °C. */
export const about = {
  name: 'Viscosity of warm petrol',
  in: { viscosity20: role(fuelViscosity, 'μ_20', 'Viscosity at 20 °C'), temperature: fuelTemperature },
  out: fuelViscosity,
  units: { temperature: 'K', out: 'Pa s', viscosity20: 'Pa s' },
  equation: 'viscosity20 * exp(3.68 * (293 / temperature - 1))',
  source: ['white-fluid', 'table A.3: exponential fit of gasoline, within 6 % from 0 to 100 °C'],
  notes: 'Ethanol is thicker than petrol and is left out; the loss of a line in turbulent flow hardly depends on it.',
} as const satisfies About

export const fuelViscosityAt = formula<typeof about>('fuel-viscosity-at', { temperature: [degC(0), degC(100)] }, ({ viscosity20, temperature }) => viscosity20 * Math.exp(3.68 * (293 / temperature - 1)))

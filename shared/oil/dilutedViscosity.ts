import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { dilution, kinematicViscosity } from './quantities.ts'
import { fuelEnd100, fuelEnd40 } from './fuelEnd.ts'

const height = (name: string): string => `log10(log10(${name} + 0.7))`
const mixed = (oil: string, fuel: string): string => `10^(10^((1 - share) * ${height(oil)} + share * ${height(fuel)})) - 0.7`

/** Viscosities of an oil with fuel in it, at 40 and 100 °C, blended with the heavy end of petrol that stays behind in hot oil. */
export const about = {
  name: 'Viscosities of oil with fuel in it',
  in: { share: dilution, viscosity40: role(kinematicViscosity, 'ν_40', 'Viscosity at 40 °C'), viscosity100: role(kinematicViscosity, 'ν_100', 'Viscosity at 100 °C') },
  out: { viscosity40: role(kinematicViscosity, "ν'_40", 'With fuel, at 40 °C'), viscosity100: role(kinematicViscosity, "ν'_100", 'With fuel, at 100 °C') },
  equation: { viscosity40: mixed('viscosity40', 'fuelEnd40'), viscosity100: mixed('viscosity100', 'fuelEnd100') },
  constants: { fuelEnd40: fuelEnd40, fuelEnd100: fuelEnd100 },
  units: { viscosity40: 'mm²/s', viscosity100: 'mm²/s' },
  source: ['astm-d7152', 'the same blending rule; fuel lies below the range it was made for'],
  notes: 'An extrapolation: fuel is thinner than the 2 mm²/s for which the simple line is meant, and which part of it stays is not known. The fuel is taken as n-decane.',
} as const satisfies About

export const dilutedViscosity = formula<typeof about>('diluted-viscosity', { viscosity40: [2e-6, 2e-2], viscosity100: [2e-6, 2e-2] }, ({ share, viscosity40, viscosity100 }) => {
  const height = (nu: number): number => Math.log10(Math.log10(nu + 0.7))
  const mix = (oil: number, fuel: number): number => (10 ** (10 ** ((1 - share) * height(oil * 1e6) + share * height(fuel))) - 0.7) * 1e-6
  return { viscosity40: mix(viscosity40, fuelEnd40.value), viscosity100: mix(viscosity100, fuelEnd100.value) }
})

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelEnd100 } from './fuelEnd.ts'
import { dilution, viscosityAt100 } from './quantities.ts'

/** Fuel in the oil at which the viscosity at 100 °C comes down to a limit. */
export const about = {
  name: 'Fuel that leads to a limit',
  in: { viscosity: role(viscosityAt100, 'ν_0', 'Fresh oil at 100 °C'), limit: role(viscosityAt100, 'ν_l', 'Limit at 100 °C') },
  out: dilution,
  equation: 'max(0, (log10(log10(viscosity + 0.7)) - log10(log10(limit + 0.7))) / (log10(log10(viscosity + 0.7)) - log10(log10(fuelEnd100 + 0.7))))',
  constants: { fuelEnd100 },
  units: { viscosity: 'mm²/s', limit: 'mm²/s' },
  sample: { viscosity: [5e-6, 30e-6], limit: [3e-6, 25e-6] },
  source: ['astm-d7152', 'the blending rule solved for the share; fuel lies below the range it was made for'],
  notes: 'The same extrapolation as the dilution it solves: the fuel is taken as n-decane.',
} as const satisfies About

export const dilutionToLimit = formula<typeof about>('dilution-to-limit', {}, ({ viscosity, limit }) => {
  const height = (nu: number): number => Math.log10(Math.log10(nu + 0.7))
  const fresh = height(viscosity * 1e6)
  return Math.max(0, (fresh - height(limit * 1e6)) / (fresh - height(fuelEnd100.value)))
})

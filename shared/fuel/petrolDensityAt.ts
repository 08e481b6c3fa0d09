import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { degC } from '../quantity/si.ts'
import { fuelDensity, fuelTemperature } from './quantities.ts'

const expansion = (density15: number): number => 346.4228 / density15 ** 2 + 0.4388 / density15

/** Density of petrol at a temperature, from its density at 15 °C. */
export const about = {
  name: 'Density of warm petrol',
  in: { density15: role(fuelDensity, 'ρ_15', 'Density at 15 °C'), temperature: fuelTemperature },
  out: fuelDensity,
  units: { density15: 'kg/m³', temperature: '°C', out: 'kg/m³' },
  equation: 'density15 * exp(-(346.4228 / density15^2 + 0.4388 / density15) * (temperature - 15) * (1 + 0.8 * (346.4228 / density15^2 + 0.4388 / density15) * (temperature - 15)))',
  source: ['api-mpms-11-1', 'table 54B, constants of gasolines'],
} as const satisfies About

export const petrolDensityAt = formula<typeof about>('petrol-density-at', { density15: [653, 770], temperature: [degC(-18), degC(95)] }, ({ density15, temperature }) => {
  const swelling = expansion(density15) * (temperature - 288.15)
  return density15 * Math.exp(-swelling * (1 + 0.8 * swelling))
})

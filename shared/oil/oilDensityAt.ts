import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDensity, oilTemperature } from './quantities.ts'

const warmed = '(0.6278 / density15 * (temperature - 15))'

/** Density of a lubricating oil at a temperature, from its density at 15 °C. */
export const about = {
  name: 'Oil density at a temperature',
  in: { density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), temperature: oilTemperature },
  out: oilDensity,
  equation: `density15 * exp(-${warmed} * (1 + 0.8 * ${warmed}))`,
  units: { density15: 'kg/m³', temperature: '°C', out: 'kg/m³' },
  source: ['astm-d1250', 'lubricating oils: K0 = 0, K1 = 0.6278 per kelvin (from memory)'],
} as const satisfies About

export const oilDensityAt = formula<typeof about>('oil-density-at', { density15: [800, 1164], temperature: [223.15, 423.15] }, ({ density15, temperature }) => {
  const warmed = (0.6278 / density15) * (temperature - 288.15)
  return density15 * Math.exp(-warmed * (1 + 0.8 * warmed))
})

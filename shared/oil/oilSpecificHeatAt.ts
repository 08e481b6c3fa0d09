import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDensity, oilSpecificHeat, oilTemperature } from './quantities.ts'

/** Specific heat of a petroleum oil at a temperature. */
export const about = {
  name: 'Specific heat of oil',
  in: { density15: role(oilDensity, 'ρ_15', 'Oil density at 15 °C'), temperature: oilTemperature },
  out: oilSpecificHeat,
  equation: '(1685 + 3.39 * temperature) / sqrt(density15 / 1000)',
  units: { density15: 'kg/m³', temperature: '°C', out: 'J/(kg K)' },
  source: ['cragoe-1929', 'c = (0.388 + 0.00045 t) / √d, Btu/(lb °F) and °F, turned into SI (from memory)'],
  notes: 'Relative density taken as density at 15 °C over 1000 kg/m³.',
} as const satisfies About

export const oilSpecificHeatAt = formula<typeof about>('oil-specific-heat-at', { temperature: [255, 477] },
  ({ density15, temperature }) => (1685 + 3.39 * (temperature - 273.15)) / Math.sqrt(density15 / 1000))

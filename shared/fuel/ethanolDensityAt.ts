import { formula, type About } from '../formula/formula.ts'
import { degC } from '../quantity/si.ts'
import { fuelDensity, fuelTemperature } from './quantities.ts'

/** Density of ethanol at a temperature: a parabola through 0, 30 and 60 °C of the library's curve, within 0.02 % between. */
export const about = {
  name: 'Density of ethanol',
  in: { temperature: fuelTemperature },
  out: fuelDensity,
  units: { temperature: '°C', out: 'kg/m³' },
  equation: '806.44 - 0.8335 * temperature - 0.000655 * temperature^2',
  source: ['ethanol-density-dippr', 'values at 0, 30 and 60 °C'],
} as const satisfies About

export const ethanolDensityAt = formula<typeof about>('ethanol-density-at', { temperature: [degC(0), degC(60)] }, ({ temperature }) => {
  const celsius = temperature - 273.15
  return 806.44 - 0.8335 * celsius - 0.000655 * celsius ** 2
})

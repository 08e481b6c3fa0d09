import { type Check } from '../check.ts'

const if97 = 'IAPWS, R7-97(2012), Industrial Formulation 1997'
const pressures = [[300, 0.353658941e-2, 5e-12], [500, 0.263889776e1, 5e-9], [600, 0.123443146e2, 5e-8]] as const
const temperatures = [[0.1, 372.755919], [1, 453.035632], [10, 584.149488]] as const

export const checks: readonly Check[] = [
  ...pressures.map(([temperature, value, tolerance]): Check => ({
    id: `if97-pressure-${temperature}`, of: 'water-boiling-pressure', in: { temperature }, out: { out: { value, unit: 'MPa', tolerance } }, source: `${if97}, table 35`, confidence: 'confirmed by search',
  })),
  ...temperatures.map(([pressure, value]): Check => ({
    id: `if97-temperature-${pressure}`, of: 'water-boiling-temperature', in: { pressure: `${pressure} MPa abs` }, out: { out: { value, unit: 'K', tolerance: 5e-7 } }, source: `${if97}, table 36`, confidence: 'confirmed by search',
  })),
  {
    id: 'water-boils-at-one-atmosphere', of: 'coolant-boiling-point', in: { pressure: 101325, glycol: 0 }, out: { out: { value: 99.974, unit: '°C', tolerance: 5e-4 } },
    source: 'IAPWS-95 normal boiling point of water, 99.974 °C (ITS-90)', confidence: 'from memory',
  },
]

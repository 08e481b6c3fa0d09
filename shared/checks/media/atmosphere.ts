import { type Check } from '../check.ts'

const table5 = 'ISO 2533:1975, table 5, by geopotential altitude, as transcribed in the open repository metanorma/atmospheric'
const table6 = `${table5}; speed of sound from table 6`

/** Geopotential altitude m, temperature K, pressure hPa, density kg/m³, last printed digit of each, speed of sound m/s. */
const rows: readonly (readonly [altitude: number, temperature: number, pressure: number, pressureDigit: number, density: number, densityDigit: number, sound?: number])[] = [
  [-500, 291.4, 1074.78, 0.01, 1.28489, 1e-5, 342.208],
  [0, 288.15, 1013.25, 0.01, 1.225, 1e-5, 340.294],
  [500, 284.9, 954.608, 0.001, 1.16727, 1e-5],
  [1000, 281.65, 898.746, 0.001, 1.11164, 1e-5, 336.434],
  [1500, 278.4, 845.56, 0.001, 1.05807, 1e-5],
  [2000, 275.15, 794.952, 0.001, 1.00649, 1e-5, 332.529],
  [2500, 271.9, 746.825, 0.001, 0.956859, 1e-6, 330.559],
  [3000, 268.65, 701.085, 0.001, 0.909122, 1e-6, 328.578],
  [4000, 262.15, 616.402, 0.001, 0.819129, 1e-6],
  [5000, 255.65, 540.199, 0.001, 0.736116, 1e-6, 320.529],
  [6000, 249.15, 471.81, 0.001, 0.659697, 1e-6],
]

export const checks: readonly Check[] = [
  ...rows.map(([altitude, temperature, pressure, pressureDigit, density, densityDigit, sound]): Check => ({
    id: `standard-atmosphere-${altitude}`, of: 'standard-atmosphere', in: { altitude },
    out: {
      temperature: { value: temperature, unit: 'K', tolerance: 5e-4 },
      pressure: { value: pressure, unit: 'hPa', tolerance: 0.6 * pressureDigit },
      density: { value: density, unit: 'kg/m³', tolerance: 0.6 * densityDigit },
      ...(sound === undefined ? {} : { speedOfSound: { value: sound, unit: 'm/s', tolerance: 6e-4 } }),
    },
    source: sound === undefined ? table5 : table6, confidence: 'confirmed by search',
  })),
  // The same rows read the other way: half a printed digit of density or pressure, in metres.
  ...([[500, 1.16727, 0.05], [1500, 1.05807, 0.05], [4000, 0.819129, 0.01]] as const).map(([altitude, density, tolerance]): Check => ({
    id: `density-altitude-${altitude}`, of: 'density-altitude', in: { density }, out: { out: { value: altitude, unit: 'm', tolerance } }, source: table5, confidence: 'confirmed by search',
  })),
  ...([[500, 95460.8], [1000, 89874.6], [2000, 79495.2]] as const).map(([altitude, pressure]): Check => ({
    id: `pressure-altitude-${altitude}`, of: 'pressure-altitude', in: { pressure }, out: { out: { value: altitude, unit: 'm', tolerance: 0.01 } }, source: table5, confidence: 'confirmed by search',
  })),
  ...([[288.15, 340.294], [273.15, 331.318], [323.15, 360.369]] as const).map(([temperature, speed]): Check => ({
    id: `speed-of-sound-${temperature}`, of: 'speed-of-sound', in: { temperature }, out: { out: { value: speed, unit: 'm/s', tolerance: 1e-3 } },
    source: 'a² = γ R T, NASA Glenn Research Center, page on the speed of sound; at 288.15 K ISO 2533:1975, table 6', confidence: temperature === 288.15 ? 'confirmed by search' : 'derived independently',
  })),
]

import { type Check } from '../check.ts'

const steam = 'International Association for the Properties of Water and Steam, R7-97(2012), saturated states by the iapws library'
const soak = 'First-order lag: after one time constant 63.212 % of the way is done; computed independently'

export const checks: readonly Check[] = [
  { id: 'boiling-heat-95', of: 'boiling-heat', in: { temperature: '95 °C' }, out: { out: { value: 2269.58, unit: 'kJ/kg', tolerance: 0.15 } }, source: steam, confidence: 'computed by a reference library' },
  { id: 'boiling-heat-125', of: 'boiling-heat', in: { temperature: '125 °C' }, out: { out: { value: 2188.04, unit: 'kJ/kg', tolerance: 0.2 } }, source: steam, confidence: 'computed by a reference library' },
  { id: 'rail-one-time-constant', of: 'soaked-temperature', in: { start: '40 °C', source: '100 °C', conductance: 0.8, capacity: 1500, time: 1875 }, out: { out: { value: 77.9272, unit: '°C', tolerance: 0.0001 } }, source: soak, confidence: 'derived independently' },
  { id: 'metal-and-water-meet', of: 'even-temperature', in: { metal: '130 °C', metalCapacity: 45e3, coolant: '100 °C', coolantCapacity: 30e3 }, out: { out: { value: 118, unit: '°C', tolerance: 1e-9 } }, source: 'Mixing by the first law, (45 · 130 + 30 · 100) / 75, computed by hand', confidence: 'derived independently' },
  { id: 'air-viscosity-15', of: 'air-viscosity-at', in: { temperature: '15 °C' }, out: { out: { value: 1.7894e-5, unit: 'Pa s', tolerance: 5e-10 } }, source: 'ISO 2533:1975, table at sea level', confidence: 'from memory' },
  { id: 'air-conductivity-15', of: 'air-conductivity-at', in: { temperature: '15 °C' }, out: { out: { value: 0.025343, unit: 'W/(m K)', tolerance: 5e-6 } }, source: 'ISO 2533:1975, table at sea level', confidence: 'from memory' },
  { id: 'friction-at-10000', of: 'petukhov-friction', in: { reynolds: 1e4 }, out: { out: { value: 0.0315, unit: '1', tolerance: 0.0001 } }, source: 'Petukhov at Re 10,000: (0.79 · 9.2103 − 1.64)^−2, computed by hand', confidence: 'derived independently' },
]

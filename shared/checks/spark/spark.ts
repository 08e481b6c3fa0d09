import { type Check } from '../check.ts'

const awg = 'National Bureau of Standards Handbook 100, copper wire tables (1966): solid annealed copper at 20 °C'

/** Coils, charging and wires. */
export const checks: readonly Check[] = [
  {
    id: 'coil-95-percent', of: 'coil-charge-time', in: { inductance: 0.01, resistance: 2, current: 5.7, voltage: 12 },
    out: { out: { value: 14.97, unit: 'ms', tolerance: 0.01 } },
    source: 'Exercise of an introductory electricity course: coil of 10 mH and 2 Ω on 12 V, time to 95 % of its final current, 14.97 ms', confidence: 'confirmed by search',
  },
  {
    id: 'coil-one-time-constant', of: 'coil-current-after', in: { inductance: 0.004, resistance: 0.5, time: 0.008, voltage: 10 },
    out: { out: { value: 12.642, unit: 'A', tolerance: 0.001 } },
    source: 'J. W. Nilsson, S. A. Riedel, Electric Circuits, section 7.3: 63.212 % of the final current after one time constant', confidence: 'from memory',
  },
  {
    id: 'spark-7.5-ms', of: 'spark-period-at', in: { speed: '8000 rpm', sparks: 1 },
    out: { out: { value: 7.5, unit: 'ms', tolerance: 1e-9 } },
    source: 'Sixty thousand milliseconds in a minute over 8 000 turns', confidence: 'derived independently',
  },
  {
    id: 'coil-energy-round', of: 'coil-energy-at', in: { inductance: 0.004, current: 10 },
    out: { out: { value: 200, unit: 'mJ', tolerance: 1e-9 } },
    source: 'Half of 4 mH times 10 A squared', confidence: 'derived independently',
  },
  {
    id: 'wire-awg-14', of: 'wire-resistance-of', in: { length: '1000 ft', area: '2.081 mm²', temperature: '20 °C' },
    out: { out: { value: 2.525, unit: 'Ω', tolerance: 0.001 } },
    source: `${awg}, gauge 14: 2.525 Ω per 1 000 ft`, confidence: 'from memory',
  },
  {
    id: 'wire-awg-10', of: 'wire-resistance-of', in: { length: '1000 ft', area: '5.261 mm²', temperature: '20 °C' },
    out: { out: { value: 0.9989, unit: 'Ω', tolerance: 0.0005 } },
    source: `${awg}, gauge 10: 0.9989 Ω per 1 000 ft`, confidence: 'from memory',
  },
  {
    id: 'wire-awg-18', of: 'wire-resistance-of', in: { length: '1000 ft', area: '0.8231 mm²', temperature: '20 °C' },
    out: { out: { value: 6.385, unit: 'Ω', tolerance: 0.001 } },
    source: `${awg}, gauge 18: 6.385 Ω per 1 000 ft`, confidence: 'from memory',
  },
  {
    id: 'wire-iec-60228-2.5', of: 'wire-resistance-of', in: { length: 1000, area: '2.5 mm²', temperature: '20 °C' },
    out: { out: { value: 7.98, unit: 'Ω', tolerance: 0.005 } },
    source: 'IEC 60228, class 5 flexible conductor of 2.5 mm²: at most 7.98 Ω/km at 20 °C', confidence: 'from memory',
    differs: 'The standard states the most that a flexible conductor may have: its strands lie in a spiral and its copper may be less than the name; ours is solid copper of the full section.',
  },
]

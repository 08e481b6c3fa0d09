import { type Check } from '../check.ts'

/** Water in rigid and elastic pipes, and the lengths of hoses: what is printed of them elsewhere. */
export const checks: readonly Check[] = [
  {
    id: 'wave-in-water-rigid', of: 'wave-speed-of', in: { bulk: 43.2e6 * 47.88026, density: 1.94 * 515.3788, swelling: 0 }, out: { out: { value: 4720, unit: 'ft/s', tolerance: 10 } },
    source: 'T. G. Hicks, Civil Engineering Formulas, chapter 12, water hammer: modulus 43.2e6 lb/ft², density 1.94 slug/ft³; wave speed of water in a rigid pipe as hydraulics texts print it', confidence: 'from memory',
  },
  {
    id: 'sound-in-water-20', of: 'wave-speed-of', in: { bulk: 2.19e9, density: 998.2, swelling: 0 }, out: { out: { value: 1482, unit: 'm/s', tolerance: 2 } },
    source: 'CRC Handbook of Chemistry and Physics: speed of sound in water at 20 °C, adiabatic bulk modulus 2.19 GPa', confidence: 'from memory',
  },
  {
    id: 'bend-of-dash-8', of: 'hose-bend-of', in: { dash: 8, hose: 'rubber' }, out: { out: { value: 4.63, unit: 'in', tolerance: 0.005 } },
    source: 'FAA AC 43.13-1B, table 9-3: MIL-H-8794-8-L, minimum bend radius', confidence: 'confirmed by search',
  },
  {
    id: 'bend-of-dash-20', of: 'hose-bend-of', in: { dash: 20, hose: 'rubber' }, out: { out: { value: 9, unit: 'in', tolerance: 0.005 } },
    source: 'FAA AC 43.13-1B, table 9-3: MIL-H-8794-20-L, minimum bend radius', confidence: 'confirmed by search',
  },
  {
    id: 'premix-two-cans-halves', of: 'first-can-volume', in: { total: '10 L', wanted: 0.01, first: 0.02, second: 0 }, out: { out: { value: 5, unit: 'L', tolerance: 1e-9 } },
    source: 'Exact arithmetic: 10 L at 1 in 100 from 1 in 50 and plain fuel', confidence: 'derived independently',
  },
]

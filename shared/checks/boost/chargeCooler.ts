import { type Check } from '../check.ts'

/** Charge cooler: effectiveness and temperature. */
export const checks: readonly Check[] = [
  {
    id: 'cooler-cengel-aftercooler-effectiveness', of: 'effectiveness-from',
    in: { inlet: '108.6 °C', outlet: '80 °C', coolant: '30 °C' },
    out: { out: { value: 0.364, unit: '1', tolerance: 0.0006 } },
    source: 'Cengel and Boles, Thermodynamics, chapter 5, turbocharger with aftercooler (statement confirmed by search, temperatures from memory); effectiveness from them by hand', confidence: 'from memory',
  },
  {
    id: 'cooler-cengel-aftercooler-outlet', of: 'cooled-temperature',
    in: { inlet: '108.6 °C', effectiveness: 0.364, coolant: '30 °C' },
    out: { out: { value: 80, unit: '°C', tolerance: 0.05 } },
    source: 'Cengel and Boles, Thermodynamics, chapter 5, turbocharger with aftercooler (statement confirmed by search, temperatures from memory)', confidence: 'from memory',
  },
  {
    id: 'cooler-ntu-1-2', of: 'cooler-effectiveness',
    in: { flow: 0.053033009, ratedFlow: 0.3, ratedEffectiveness: 0.632 },
    out: { out: { value: 0.865, unit: '1', tolerance: 0.00087 } },
    source: 'Kays and London, Compact Heat Exchangers, table of effectiveness over NTU at capacity ratio 0 (NTU 1: 0.632, NTU 2: 0.865); the flow is the one at which NTU, going with flow to the power -0.4, comes to 2', confidence: 'from memory',
  },
  {
    id: 'cooler-ntu-1-half', of: 'cooler-effectiveness',
    in: { flow: 1.697056275, ratedFlow: 0.3, ratedEffectiveness: 0.632 },
    out: { out: { value: 0.393, unit: '1', tolerance: 0.00091 } },
    source: 'Kays and London, Compact Heat Exchangers, table of effectiveness over NTU at capacity ratio 0 (NTU 1: 0.632, NTU 0.5: 0.393); the flow is the one at which NTU, going with flow to the power -0.4, comes to 0.5', confidence: 'from memory',
  },
  {
    id: 'cooler-ntu-1-3', of: 'cooler-effectiveness',
    in: { flow: 0.019245009, ratedFlow: 0.3, ratedEffectiveness: 0.632 },
    out: { out: { value: 0.95, unit: '1', tolerance: 0.0007 } },
    source: 'Kays and London, Compact Heat Exchangers, table of effectiveness over NTU at capacity ratio 0 (NTU 1: 0.632, NTU 3: 0.95); the flow is the one at which NTU, going with flow to the power -0.4, comes to 3', confidence: 'from memory',
  },
]

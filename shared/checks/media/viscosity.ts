import { type Check } from '../check.ts'

/** Viscosity of air. */
export const checks: readonly Check[] = [
  { id: 'air-viscosity-sea-level', of: 'air-viscosity', in: { temperature: '288.15 K' }, out: { out: { value: 1.7894e-5, unit: 'Pa s', tolerance: 5e-10 } }, source: 'U.S. Standard Atmosphere, 1976, table of transport properties at sea level; ISO 2533 gives the same', confidence: 'from memory' },
  { id: 'air-viscosity-11-km', of: 'air-viscosity', in: { temperature: '216.65 K' }, out: { out: { value: 1.4216e-5, unit: 'Pa s', tolerance: 5e-10 } }, source: 'U.S. Standard Atmosphere, 1976, table of transport properties at 11 km', confidence: 'from memory' },
]

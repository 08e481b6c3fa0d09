import { type Check } from '../check.ts'

const table = 'API MPMS 11.1 (ASTM D1250-80), table 54B: constants of gasolines, worked out independently with Python'

/** Volume correction factor to four places, times the density at 15 °C. */
const warm = (density15: number, celsius: number, factor: number): Check => ({
  id: `petrol-${density15}-${celsius}`, of: 'petrol-density-at', in: { density15, temperature: `${celsius} °C` },
  out: { out: { value: density15 * factor, unit: 'kg/m³', tolerance: density15 * 0.00005 } }, source: `${table}: factor ${factor}`, confidence: 'derived independently',
})

export const checks: readonly Check[] = [
  warm(720, 30, 0.9807), warm(745, 40, 0.9694), warm(760, 5, 1.0117),
  {
    id: 'petrol-viscosity-15-6', of: 'fuel-viscosity-at', in: { viscosity20: 2.92e-4, temperature: '15.6 °C' },
    out: { out: { value: 3.1e-4, unit: 'Pa s', tolerance: 0.05e-4 } },
    source: 'B. R. Munson and others, Fundamentals of Fluid Mechanics, table 1.6: gasoline at 15.6 °C, 3.1e-4 N s/m²', confidence: 'confirmed by search',
  },
]

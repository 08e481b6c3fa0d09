import { type Check } from '../check.ts'

const orifice = 'Incompressible orifice law, Q = C A √(2 Δp / ρ), computed independently'

const root = (drop: number, value: number): Check => ({
  id: `injector-sqrt-300-${drop}`, of: 'injector-flow-at', in: { ratedFlow: '1000 cc/min', drop: `${drop} kPa`, ratedDrop: '300 kPa' },
  out: { out: { value: value * 1000, unit: 'cm³/min', tolerance: 1e-3 } }, source: `${orifice}: ratio of flows at ${drop} and 300 kPa`, confidence: 'derived independently',
})

export const checks: readonly Check[] = [
  root(350, 1.0801234), root(400, 1.1547005), root(200, 0.8164966),
  {
    id: 'injector-fluid-density', of: 'injector-flow-of-fluid', in: { flow: '1000 cc/min', ratedDensity: 684, density: 745 },
    out: { out: { value: 958.19, unit: 'cm³/min', tolerance: 0.1 } }, source: `${orifice}: n-heptane 684 and petrol 745 kg/m³`, confidence: 'derived independently',
  },
  {
    id: 'injector-mass-flow', of: 'stage-mass-flow', in: { flow: '958.19 cc/min', number: 1, density: 745 },
    out: { out: { value: (684 * 1.04365) / 60, unit: 'g/s', tolerance: (684 * 1e-4) / 60 } }, source: `${orifice}: ratio of mass flows 1.04365, from 1000 cm³/min of n-heptane`, confidence: 'derived independently',
  },
]

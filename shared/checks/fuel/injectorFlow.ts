import { type Check } from '../check.ts'

export const checks: readonly Check[] = [
  {
    id: 'injector-sqrt-300-350', of: 'injector-flow-at',
    in: { ratedFlow: '1000 cc/min', drop: '350 kPa', ratedDrop: '300 kPa' },
    out: { out: { value: 1080.1234, unit: 'cm³/min', tolerance: 1e-3 } },
    source: 'Ratio of square roots, 350/300, computed independently', confidence: 'derived independently',
  },
]

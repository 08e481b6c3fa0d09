import { type Check } from '../check.ts'

/** Hose bores in inches by dash number, as the table prints them. */
const bores: readonly (readonly [number, string, number])[] = [
  [3, '1/8', 0.125], [4, '3/16', 0.1875], [5, '1/4', 0.25], [6, '5/16', 0.3125], [8, '13/32', 0.40625], [10, '1/2', 0.5], [12, '5/8', 0.625], [16, '7/8', 0.875], [20, '1 1/8', 1.125],
  [24, '1 3/8', 1.375], [32, '1 13/16', 1.8125],
]

export const checks: readonly Check[] = bores.map(([dash, printed, inches]) => ({
  id: `hose-bore-${dash}`, of: 'hose-bore-of',
  in: { dash },
  out: { out: { value: inches, unit: 'in', tolerance: 1e-9 } },
  source: `FAA AC 43.13-1B (1998), table 9-3, MIL-H-8794 single wire braid: bore ${printed} in`, confidence: 'confirmed by search',
}))

import type { Margin } from '@trochoid/compute/build/margin.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { registry } from '../registry.ts'

export type Feeds = { readonly calculations: readonly AnyCalculation[]; readonly margins: readonly Margin[] }

/** What takes a field of the sheet: calculators that read it, margins that rest on it, ask it, or could be mended by it. */
export function feeds(path: string): Feeds {
  const reads = (input: { readonly origin: string; readonly path?: string }): boolean => input.origin === 'field' && input.path === path
  return {
    calculations: [...registry.calculations.values()].filter((c) => Object.values(c.in).some(reads)),
    margins: [...registry.margins.values()].filter((m) => [m.demand, m.capacity, ...m.rests, ...m.remedies.map((r) => r.field)].some(reads)),
  }
}

import { type Check } from '../check.ts'

const bends = 'fluids 1.3.1, fittings.bend_rounded with the method of Rennels (tests/reference/breathing.py)'

/** Ducts, bends, filters, and readings of a compressor. */
export const checks: readonly Check[] = [
  ...([[1.5, 90, 0.018, 0.225403761], [1, 90, 0.018, 0.313434805], [3, 45, 0.018, 0.136863152], [1.5, 60, 0.03, 0.272318537]] as const).map(([radius, angle, friction, value]) => ({
    id: `bend-${radius}-${angle}`, of: 'bend-loss', in: { radius, angle: `${angle}°`, friction }, out: { out: { value, unit: '1', tolerance: 1e-8 } }, source: bends, confidence: 'computed by a reference library' as const,
  })),
  { id: 'efficiency-gtt-2-1', of: 'compressor-efficiency-from', in: { inletTemperature: '288 K', outletTemperature: '452.7 K', ratio: 4 }, out: { out: { value: 0.85, unit: '1', tolerance: 5e-4 } }, source: 'Cohen, Rogers and Saravanamuttoo, Gas Turbine Theory, example 2.1, turned round (statement and net work confirmed by search, intermediate numbers from memory)', confidence: 'from memory' },
  { id: 'duct-coefficient-borda', of: 'duct-coefficient', in: { bore: '100 mm', length: 0, friction: 0.02, bends: 0, bend: 0, others: 1 }, out: { out: { value: 8105.6947, unit: '1/m⁴', tolerance: 1e-3 } }, source: 'One velocity head, ½ over area squared: 1 / (2 · 7.853982e-3²), worked out by hand', confidence: 'derived independently' },
  { id: 'growth-321', of: 'hot-growth', in: { length: '500 mm', expansion: 19.3e-6, hot: '650 °C', cold: '20 °C' }, out: { out: { value: 6.0795, unit: 'mm', tolerance: 1e-4 } }, source: 'Length times mean coefficient times warming, worked out by hand', confidence: 'derived independently' },
]

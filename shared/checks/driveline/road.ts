import { type Check } from '../check.ts'

export const checks: readonly Check[] = [
  { id: 'drag-at-30-m-s', of: 'drag-force-at', in: { density: 1.2, area: 0.7, speed: 30 }, out: { out: { value: 378, unit: 'N', tolerance: 1e-9 } }, source: 'Dynamic pressure of 1.2 kg/m³ at 30 m/s is 540 Pa; on 0.7 m², computed by hand', confidence: 'derived independently' },
  { id: 'circle-of-50-m', of: 'corner-speed', in: { grip: 1, radius: 50 }, out: { out: { value: 22.1434, unit: 'm/s', tolerance: 0.0001 } }, source: 'Lateral acceleration of one standard gravity on a 50 m circle, √(9.80665 · 50), computed by hand', confidence: 'derived independently' },
  { id: 'drive-force-third', of: 'drive-force', in: { torque: 400, ratio: 1.4, finalDrive: 4, efficiency: 0.9, radius: 0.3 }, out: { out: { value: 6720, unit: 'N', tolerance: 1e-6 } }, source: '400 · 1.4 · 4 · 0.9 / 0.3, computed by hand', confidence: 'derived independently' },
  { id: 'joint-factor-half', of: 'load-factor-of', in: { bolt: 200e6, stack: 600e6 }, out: { out: { value: 0.25, unit: '1', tolerance: 1e-9 } }, source: 'Stiffnesses of 200 and 600 kN/mm side by side, computed by hand', confidence: 'derived independently' },
  { id: 'clamp-under-8-kn', of: 'clamp-under-load', in: { preload: 25e3, load: 8e3, factor: 0.25 }, out: { out: { value: 19e3, unit: 'N', tolerance: 1e-6 } }, source: '25 − 0.75 · 8 kN, computed by hand', confidence: 'derived independently' },
  { id: 'ten-gram-mm', of: 'correction-mass-for', in: { unbalance: 10e-6, radius: 0.1 }, out: { out: { value: 0.1, unit: 'g', tolerance: 1e-9 } }, source: '10 g mm on a radius of 100 mm, by definition', confidence: 'derived independently' },
]

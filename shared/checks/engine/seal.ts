import { type Check } from '../check.ts'

const at8000 = { generatingRadius: '105 mm', eccentricity: '15 mm', speed: '8000 rpm' }
const source = 'v = (ω/3) sqrt(R² + 9e² + 6 e R cos 2α), mean by elliptic arc length with scipy; K. Yamamoto, Rotary Engine, for the form'

export const checks: readonly Check[] = [
  { id: 'seal-speed-extremes', of: 'apex-seal-speed-range', in: { ...at8000, shift: 0 },
    out: { highest: { value: 41.8879, unit: 'm/s', tolerance: 1e-3 }, lowest: { value: 16.7552, unit: 'm/s', tolerance: 1e-3 } }, source, confidence: 'derived independently' },
  { id: 'seal-speed-shifted', of: 'apex-seal-speed-range', in: { ...at8000, shift: '3 mm' }, out: { highest: { value: 42.7257, unit: 'm/s', tolerance: 1e-3 } }, source, confidence: 'derived independently' },
  { id: 'seal-speed-mean', of: 'apex-seal-mean-speed', in: { perTurn: '230.131126 mm', speed: at8000.speed }, out: { out: { value: 30.6842, unit: 'm/s', tolerance: 1e-3 } }, source, confidence: 'computed by a reference library' },
  { id: 'seal-speed-long-axis', of: 'apex-seal-speed', in: { ...at8000, shift: 0, rotorAngle: 0 }, out: { out: { value: 41.8879, unit: 'm/s', tolerance: 1e-3 } }, source, confidence: 'derived independently' },
]

import { type Check } from '../check.ts'

const j300 = 'SAE J300 (2015), table 1, as reproduced by several oil suppliers'

/** Limits of grades in the cold and the heat, and what follows from a hydrostatic surface. */
export const checks: readonly Check[] = [
  { id: 'j300-pumping-5w', of: 'grade-pumping', in: { grade: '5W-40' }, out: { temperature: { value: -35, unit: '°C', tolerance: 0.01 }, most: { value: 60000, unit: 'mPa s', tolerance: 1 } }, source: j300, confidence: 'confirmed by search' },
  { id: 'j300-pumping-20w', of: 'grade-pumping', in: { grade: '20W-50' }, out: { temperature: { value: -20, unit: '°C', tolerance: 0.01 } }, source: j300, confidence: 'confirmed by search' },
  { id: 'j300-hot-grade-of-14', of: 'hot-grade-of', in: { viscosity100: '14 mm²/s' }, out: { out: { value: 40, unit: '1', tolerance: 0.1 } }, source: j300, confidence: 'confirmed by search' },
  { id: 'j300-hot-grade-of-9', of: 'hot-grade-of', in: { viscosity100: '9.29 mm²/s' }, out: { out: { value: 20, unit: '1', tolerance: 0.1 } }, source: j300, confidence: 'confirmed by search' },
  { id: 'surface-under-one-third-g', of: 'tilt-of', in: { acceleration: 9.80665 / 3 }, out: { out: { value: 18.43, unit: '°', tolerance: 0.01 } }, source: 'F. M. White, Fluid Mechanics, section 2.9: slope of the surface is acceleration over gravity; the arc tangent of one third', confidence: 'derived independently' },
]

import { formula, type About } from '../formula/formula.ts'
import { arcBetween } from './arcQuadrature.ts'
import { eccentricity, generatingRadius, parallelShift, sealSpeed, shaftSpeed } from './quantities.ts'

/** Mean sliding speed over one round: what seal wear is counted in. */
export const about = {
  name: 'Mean sliding speed of the apex seal',
  in: { generatingRadius, eccentricity, shift: parallelShift, speed: shaftSpeed },
  out: sealSpeed,
  steps: ['Length of the trochoid once round: four quarters, each the integral of sqrt(R² + 9e² + 6eR cos 2α) from 0 to π/2, by Gauss and Legendre.', 'Add 2π times the shift.', 'Times shaft speed over 2π, over three: one round takes three turns of the shaft.'],
  source: ['derived', 'arc length of the epitrochoid and of its parallel'],
} as const satisfies About

export const apexSealMeanSpeed = formula<typeof about>('apex-seal-mean-speed', {}, ({ generatingRadius: R, eccentricity: e, shift, speed }) => {
  const quarter = arcBetween((angle) => Math.sqrt(R * R + 9 * e * e + 6 * e * R * Math.cos(2 * angle)), 0, Math.PI / 2)
  return (speed / (6 * Math.PI)) * (4 * quarter + 2 * Math.PI * shift)
})

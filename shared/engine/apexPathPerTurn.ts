import { formula, type About } from '../formula/formula.ts'
import { arcBetween } from './arcQuadrature.ts'
import { eccentricity, generatingRadius, parallelShift, sealPathPerTurn } from './quantities.ts'

/** How far an apex slides along the housing in one turn of the shaft. */
export const about = {
  name: 'Path of an apex seal in a shaft turn',
  in: { generatingRadius, eccentricity, shift: parallelShift },
  out: sealPathPerTurn,
  steps: ['Length of the trochoid once round: four quarters, each the integral of sqrt(R² + 9e² + 6eR cos 2α) from 0 to π/2, by Gauss and Legendre.', 'Add 2π times the shift.', 'Divide by three: one round takes three turns of the shaft.'],
  source: ['derived', 'arc length of the epitrochoid and of its parallel'],
} as const satisfies About

export const apexPathPerTurn = formula<typeof about>('apex-path-per-turn', {}, ({ generatingRadius: R, eccentricity: e, shift }) => {
  const quarter = arcBetween((angle) => Math.sqrt(R * R + 9 * e * e + 6 * e * R * Math.cos(2 * angle)), 0, Math.PI / 2)
  return (4 * quarter + 2 * Math.PI * shift) / 3
})

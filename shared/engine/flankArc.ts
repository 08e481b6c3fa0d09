import { formula, type About } from '../formula/formula.ts'
import { arcBetween } from './arcQuadrature.ts'
import { arcLength, eccentricity, generatingRadius } from './quantities.ts'

/** Length of one rotor flank, apex to apex: the inner envelope of the trochoid, before any shift. */
export const about = {
  name: 'Length of a rotor flank',
  in: { generatingRadius, eccentricity },
  out: arcLength,
  steps: [
    'With s = sqrt(1 - (3e/R)² sin² 3v), a point of the envelope stands u = R + 2 e s cos 3v from the rotor’s centre along the direction 2v, and w = (3e²/R) sin 6v square to it.',
    'Its speed over v is sqrt((u′ - 2w)² + (w′ + 2u)²).',
    'Integrate from an apex, v = π/6, to the middle of the flank, v = π/3, by Gauss and Legendre, and double.',
  ],
  source: ['yamamoto-1981', 'inner envelope of the peritrochoid, rearranged'],
  notes: 'Holds while the generating radius is more than three times the eccentricity.',
} as const satisfies About

export const flankArc = formula<typeof about>('flank-arc', {}, ({ generatingRadius: R, eccentricity: e }) => {
  const k2 = (9 * e * e) / (R * R)
  const speed = (v: number): number => {
    const s3 = Math.sin(3 * v)
    const c3 = Math.cos(3 * v)
    const s = Math.sqrt(1 - k2 * s3 * s3)
    const along = 2 * e * ((-3 * k2 * s3 * c3 * c3) / s - 3 * s * s3) - ((12 * e * e) / R) * s3 * c3
    const across = ((18 * e * e) / R) * Math.cos(6 * v) + 2 * (R + 2 * e * s * c3)
    return Math.sqrt(along * along + across * across)
  }
  return 2 * arcBetween(speed, Math.PI / 6, Math.PI / 3)
})

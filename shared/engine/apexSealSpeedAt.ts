import { formula, type About } from '../formula/formula.ts'
import { apexAngle, eccentricity, generatingRadius, parallelShift, sealSpeed, shaftSpeed } from './quantities.ts'

/**
 * Sliding speed of an apex seal at one place of the housing. The seal's centre runs along the epitrochoid at the speed of the curve, and the seal turns
 * with the rotor, a third of shaft speed, about that centre: where it touches, at the shift's distance, that adds.
 */
export const about = {
  name: 'Sliding speed of the apex seal at a place',
  in: { generatingRadius, eccentricity, shift: parallelShift, speed: shaftSpeed, angle: apexAngle },
  out: sealSpeed,
  equation: 'speed / 3 * (sqrt(generatingRadius^2 + 9 * eccentricity^2 + 6 * generatingRadius * eccentricity * cos(2 * angle)) + shift)',
  source: ['derived', 'speed of x = e cos 3α + R cos α, y = e sin 3α + R sin α, and the rotor’s own turning at the distance of the shift'],
} as const satisfies About

export const apexSealSpeedAt = formula<typeof about>('apex-seal-speed-at', {}, ({ generatingRadius: R, eccentricity: e, shift, speed, angle }) =>
  (speed / 3) * (Math.sqrt(R ** 2 + 9 * e ** 2 + 6 * R * e * Math.cos(2 * angle)) + shift))

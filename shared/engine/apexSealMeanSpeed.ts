import { formula, type About } from '../formula/formula.ts'
import { sealPathPerTurn, sealSpeed, shaftSpeed } from './quantities.ts'

/** Mean sliding speed over one round: what seal wear is counted in. */
export const about = {
  name: 'Mean sliding speed of the apex seal',
  in: { perTurn: sealPathPerTurn, speed: shaftSpeed },
  out: sealSpeed,
  equation: 'perTurn * speed / (2 * pi)',
  source: ['derived', 'path in a turn over the time of a turn'],
} as const satisfies About

export const apexSealMeanSpeed = formula<typeof about>('apex-seal-mean-speed', {}, ({ perTurn, speed }) => (perTurn * speed) / (2 * Math.PI))

import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { alternatorSpeed, pulleyRatio } from './quantities.ts'

/** Speed of the alternator. `n i_p`; the ratio is shaft pulley over alternator pulley. */
export const about = {
  name: 'Speed of the alternator',
  in: { speed: shaftSpeed, ratio: pulleyRatio },
  out: alternatorSpeed,
  equation: 'speed * ratio',
  source: ['definition', 'of a pulley ratio, belt not slipping'],
} as const satisfies About

export const alternatorSpeedAt = formula<typeof about>('alternator-speed-at', {}, ({ speed, ratio }) => speed * ratio)

import { formula, type About } from '../formula/formula.ts'
import { filmRatio, filmThickness, surfaceRoughness } from './quantities.ts'

/** Film over the roughness of both surfaces. */
export const about = {
  name: 'Film over roughness',
  in: { film: filmThickness, roughness: surfaceRoughness },
  out: filmRatio,
  equation: 'film / roughness',
  source: ['hamrock-films', 'film parameter Λ'],
} as const satisfies About

export const filmRatioOf = formula<typeof about>('film-ratio-of', {}, ({ film, roughness }) => film / roughness)

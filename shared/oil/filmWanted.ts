import { formula, type About } from '../formula/formula.ts'
import { filmRatio, filmThickness, surfaceRoughness } from './quantities.ts'

/** Film that keeps the surfaces apart by a wanted number of roughness heights. */
export const about = {
  name: 'Film wanted',
  in: { roughness: surfaceRoughness, ratio: filmRatio },
  out: filmThickness,
  equation: 'roughness * ratio',
  source: ['hamrock-films', 'film parameter Λ: film over composite roughness'],
  notes: 'Roughness only: bending, misalignment and dirt want more.',
} as const satisfies About

export const filmWanted = formula<typeof about>('film-wanted', {}, ({ roughness, ratio }) => roughness * ratio)

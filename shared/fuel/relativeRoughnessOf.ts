import { formula, type About } from '../formula/formula.ts'
import { lineBore, relativeRoughness, wallRoughness } from './quantities.ts'

/** Wall roughness over bore. */
export const about = {
  name: 'Roughness over bore',
  in: { roughness: wallRoughness, bore: lineBore },
  out: relativeRoughness,
  equation: 'roughness / bore',
  source: ['definition', 'roughness over diameter'],
} as const satisfies About

export const relativeRoughnessOf = formula<typeof about>('relative-roughness-of', {}, ({ roughness, bore }) => roughness / bore)

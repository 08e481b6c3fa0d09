import { formula, type About } from '../formula/formula.ts'
import { displacement, minimumVolume, theoreticalRatio } from './quantities.ts'

/** The most compression that the geometry allows: a flank without recess, no gap, no plug holes. */
export const about = {
  name: 'Theoretical compression ratio',
  in: { displacement, minimumVolume },
  out: theoreticalRatio,
  equation: '1 + displacement / minimumVolume',
  source: ['yamamoto-1981', 'basic geometry: theoretical compression ratio'],
} as const satisfies About

export const theoreticalCompressionRatio = formula<typeof about>('theoretical-compression-ratio', {}, ({ displacement: swept, minimumVolume: least }) => 1 + swept / least)

import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { compressionRatio, displacement, minimumVolume, plugVolume, recessVolume } from './quantities.ts'

/** Recess that gives a wanted compression ratio. Negative: the geometry cannot reach it. */
export const about = {
  name: 'Recess for a compression ratio',
  in: { displacement, compressionRatio, minimumVolume, gapVolume: role(minimumVolume, 'V_g', 'Volume of the flank gap'), plugVolume },
  out: recessVolume,
  equation: 'displacement / (compressionRatio - 1) - minimumVolume - gapVolume - plugVolume',
  source: ['definition', 'compression ratio is largest over smallest volume'],
  notes: 'Volumes under the seals and beside the rotor are left out: they lower the ratio a little further.',
} as const satisfies About

export const recessForCompressionRatio = formula<typeof about>('recess-for-compression-ratio', {}, ({ displacement: swept, compressionRatio: ratio, minimumVolume: least, gapVolume, plugVolume: plugs }) =>
  swept / (ratio - 1) - least - gapVolume - plugs)

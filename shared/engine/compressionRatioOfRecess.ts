import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { compressionRatio, displacement, minimumVolume, plugVolume, recessVolume } from './quantities.ts'

/** Compression ratio that a measured recess gives. */
export const about = {
  name: 'Compression ratio from the recess',
  in: { displacement, recess: recessVolume, minimumVolume, gapVolume: role(minimumVolume, 'V_g', 'Volume of the flank gap'), plugVolume },
  out: compressionRatio,
  equation: '1 + displacement / (recess + minimumVolume + gapVolume + plugVolume)',
  source: ['definition', 'compression ratio is largest over smallest volume'],
  notes: 'Volumes under the seals and beside the rotor are left out.',
} as const satisfies About

export const compressionRatioOfRecess = formula<typeof about>('compression-ratio-of-recess', {}, ({ displacement: swept, recess, minimumVolume: least, gapVolume, plugVolume: plugs }) =>
  1 + swept / (recess + least + gapVolume + plugs))

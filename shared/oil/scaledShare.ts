import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { highShearShare, viscosityScale } from './quantities.ts'

/** Share left at high shear, scaled with the oil: stands for an oil that is a number of times thicker at every temperature. */
export const about = {
  name: 'Share of a thicker oil',
  in: { share: highShearShare, scale: viscosityScale },
  out: role(highShearShare, 's_w', 'Share that stands for the thicker oil'),
  equation: 'share * scale',
  source: ['definition', 'a multiple'],
} as const satisfies About

export const scaledShare = formula<typeof about>('scaled-share', {}, ({ share, scale }) => share * scale)

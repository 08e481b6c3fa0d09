import { type About, formula } from '../formula/formula.ts'
import { sealOiling } from '../oil/quantities.ts'
import { role } from '../quantity/quantity.ts'
import { premixShare } from './quantities.ts'

/** Oil share of the fuel that is burned: what is premixed, and nothing where only a metering pump feeds the seals. */
export const about = {
  name: 'Oil share of the fuel burned',
  in: { by: sealOiling, share: premixShare },
  out: role(premixShare, 'x_b', 'Oil share of the fuel burned'),
  steps: ['Metering pump alone: no oil comes with the fuel.', 'Else the share that is premixed.'],
  source: ['definition', 'what stands in the sheet as premix counts only where it is used'],
} as const satisfies About

export const oilShareBurned = formula<typeof about>('oil-share-burned', {}, ({ by, share }) => (by === 'metered' ? 0 : share))

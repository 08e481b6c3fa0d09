import { type About, formula } from '../formula/formula.ts'
import { oilDose, premixShare, tankVolume } from './quantities.ts'

/** Oil share that one pour makes in a volume of fuel. */
export const about = {
  name: 'Oil share of a pour',
  in: { poured: oilDose, fuel: tankVolume },
  out: premixShare,
  equation: 'poured / fuel',
  sample: { fuel: [1e-3, 0.15] },
  source: ['definition', 'oil over fuel, by volume'],
} as const satisfies About

export const shareOfPour = formula<typeof about>('share-of-pour', {}, ({ poured, fuel }) => poured / fuel)

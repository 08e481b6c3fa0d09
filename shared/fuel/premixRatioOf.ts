import { formula, type About } from '../formula/formula.ts'
import { premixRatio, premixShare } from './quantities.ts'

/** Fuel to oil, as the trade says it: 200 to 1. */
export const about = {
  name: 'Premix ratio',
  in: { share: premixShare },
  out: premixRatio,
  equation: '1 / share',
  source: ['definition', 'fuel over oil by volume'],
  sample: { share: [1e-4, 0.05] },
} as const satisfies About

export const premixRatioOf = formula<typeof about>('premix-ratio-of', {}, ({ share }) => 1 / share)

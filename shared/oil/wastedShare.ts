import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { blendShareReturned, oilFlow } from './quantities.ts'

/** Part of the pumped oil that the relief valve sends back. */
export const about = {
  name: 'Share returned by the relief valve',
  in: { given: role(oilFlow, 'Q_i', 'What is pumped'), taken: role(oilFlow, 'Q_t', 'What the engine takes') },
  out: blendShareReturned,
  equation: 'max(0, 1 - taken / given)',
  sample: { given: [1e-4, 2e-3], taken: [1e-5, 1e-3] },
  source: ['derived', 'conservation of volume'],
} as const satisfies About

export const wastedShare = formula<typeof about>('wasted-share', {}, ({ given, taken }) => Math.max(0, 1 - taken / given))

import { formula, type About } from '../formula/formula.ts'
import { fuelVolumeFlow, stageShare } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Flow in the branch to the second rail where the rails stand side by side: its share of what comes in. */
export const about = {
  name: 'Flow to the second rail in parallel',
  in: { feed: role(fuelVolumeFlow, 'Q_in', 'Flow in the feed'), share: stageShare },
  out: role(fuelVolumeFlow, 'Q_l', 'Flow in the branch'),
  equation: 'feed * share',
  source: ['derived', 'conservation of volume'],
  notes: 'Fuel that returns is taken to part between the branches as the used fuel does.',
} as const satisfies About

export const linkFlowParallel = formula<typeof about>('link-flow-parallel', {}, ({ feed, share }) => feed * share)

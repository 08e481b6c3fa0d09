import { formula, type About } from '../formula/formula.ts'
import { fuelVolumeFlow, stageShare } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Flow from the first rail to the second where they stand in series: all that comes in less what the first rail's injectors take. */
export const about = {
  name: 'Flow between rails in series',
  in: { feed: role(fuelVolumeFlow, 'Q_in', 'Flow in the feed'), used: role(fuelVolumeFlow, 'Q_f', 'Fuel used'), share: stageShare },
  out: role(fuelVolumeFlow, 'Q_l', 'Flow between the rails'),
  equation: 'max(feed - (1 - share) * used, share * used)',
  sample: { feed: [1e-6, 2e-4], used: [1e-6, 2e-4], share: [0.05, 0.95] },
  source: ['derived', 'conservation of volume; never less than what the second rail takes'],
} as const satisfies About

export const linkFlowSeries = formula<typeof about>('link-flow-series', {}, ({ feed, used, share }) => Math.max(feed - (1 - share) * used, share * used))

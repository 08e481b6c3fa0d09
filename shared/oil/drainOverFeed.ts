import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { drainTimes, foamFactor, oilFlow } from './quantities.ts'

/** What a drain carries over the foam that comes to it. */
export const about = {
  name: 'Drain over feed',
  in: { drain: role(oilFlow, 'Q_d', 'What the drain carries'), feed: role(oilFlow, 'Q_t', 'Feed'), foam: foamFactor },
  out: drainTimes,
  equation: 'drain / (feed * foam)',
  sample: { feed: [1e-6, 1e-4] },
  source: ['common-practice', 'oil leaves the bearing housing as foam of more than its own volume'],
} as const satisfies About

export const drainOverFeed = formula<typeof about>('drain-over-feed', {}, ({ drain, feed, foam }) => drain / (feed * foam))

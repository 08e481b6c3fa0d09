import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelVolumeFlow, starvedTime } from './quantities.ts'

/** Time in which a lift pump fills the pot again while the engine burns on. */
export const about = {
  name: 'Time to fill up again',
  in: { used: fuelVolumeFlow, starved: starvedTime, lift: role(fuelVolumeFlow, 'Q_l', 'Flow of the lift pump') },
  out: role(starvedTime, 't_r', 'Time to fill up again'),
  equation: 'used * starved / (lift - used)',
  sample: { used: [1e-6, 5e-5], lift: [6e-5, 2e-4] },
  source: ['derived', 'conservation of volume'],
} as const satisfies About

export const refillTimeOf = formula<typeof about>('refill-time-of', {}, ({ used, starved, lift }) => (used * starved) / (lift - used))

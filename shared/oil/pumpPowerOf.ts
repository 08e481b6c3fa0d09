import { type About, formula } from '../formula/formula.ts'
import { oilDrop, oilFlow, oilPumpPower, pumpTotalShare } from './quantities.ts'

/** Power that a pump takes to lift a flow against a pressure. */
export const about = {
  name: 'Power of an oil pump',
  in: { drop: oilDrop, flow: oilFlow, efficiency: pumpTotalShare },
  out: oilPumpPower,
  equation: 'drop * flow / efficiency',
  source: ['derived', 'pressure times flow is power; the rest is lost in the pump'],
  notes: 'All that is pumped counts, also what the relief valve returns.',
} as const satisfies About

export const pumpPowerOf = formula<typeof about>('pump-power-of', {}, ({ drop, flow, efficiency }) => (drop * flow) / efficiency)

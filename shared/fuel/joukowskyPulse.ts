import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelDensity, lineSpeed, pressurePulse, waveSpeed } from './quantities.ts'

/** Rise of pressure where a flow is stopped faster than a wave can run to the next open volume and back. */
export const about = {
  name: 'Pulse of a sudden stop',
  in: { density: fuelDensity, waveSpeed, change: role(lineSpeed, 'Δv', 'Change of flow speed') },
  out: pressurePulse,
  equation: 'density * waveSpeed * change',
  source: ['wylie-streeter', 'Joukowsky: Δp = ρ a Δv (from memory)'],
  notes: 'An upper bound: no friction, an instant stop, a straight line without branches.',
} as const satisfies About

export const joukowskyPulse = formula<typeof about>('joukowsky-pulse', {}, ({ density, waveSpeed: speed, change }) => density * speed * change)

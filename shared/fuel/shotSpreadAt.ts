import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { deadTime, fuelSpread, pulseWidth, smallestPulse } from './quantities.ts'

/** Spread of the fuel of single shots at a pulse, from that at the smallest repeatable one. */
export const about = {
  name: 'Spread of shots at a pulse',
  in: {
    spread: role(fuelSpread, 's_min', 'Spread of shots at the smallest pulse'), smallest: smallestPulse, deadTime, pulse: pulseWidth,
  },
  out: role(fuelSpread, 's_t', 'Spread of shots at this pulse'),
  equation: 'spread * (smallest - deadTime) / (pulse - deadTime)',
  sample: { smallest: [1.5e-3, 3e-3], deadTime: [0.3e-3, 1.2e-3], pulse: [1.4e-3, 20e-3] },
  source: ['derived', 'opening and closing scatter by a time that is the same at every pulse, so its share falls as the open time grows'],
  notes: 'Above the smallest repeatable pulse an estimate; below it the needle no longer opens fully and the true spread is larger.',
} as const satisfies About

export const shotSpreadAt = formula<typeof about>('shot-spread-at', {}, ({ spread, smallest, deadTime: dead, pulse }) => (spread * (smallest - dead)) / (pulse - dead))

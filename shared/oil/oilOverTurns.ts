import { type About, formula } from '../formula/formula.ts'
import { oilMass, sealDose, turnsOf } from './quantities.ts'

/** Oil given over a number of turns. */
export const about = {
  name: 'Oil over turns',
  in: { dose: sealDose, turns: turnsOf },
  out: oilMass,
  equation: 'dose * turns',
  source: ['definition', 'dose of a turn times turns'],
} as const satisfies About

export const oilOverTurns = formula<typeof about>('oil-over-turns', {}, ({ dose, turns }) => dose * turns)

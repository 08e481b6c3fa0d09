import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { closingTime, pulseWidth, turnTime } from './quantities.ts'

/** What is left of a shaft turn when the longer of the two pulses has ended. */
export const about = {
  name: 'Time left for closing',
  in: { turn: turnTime, primary: role(pulseWidth, 't_1', 'Pulse of a primary'), secondary: role(pulseWidth, 't_2', 'Pulse of a secondary') },
  out: closingTime,
  equation: 'turn - max(primary, secondary)',
  source: ['definition', 'time of one turn less the longer pulse'],
  sample: { primary: [1e-4, 0.04], secondary: [1e-4, 0.04] },
} as const satisfies About

export const closingTimeLeft = formula<typeof about>('closing-time-left', {}, ({ turn, primary, secondary }) => turn - Math.max(primary, secondary))

import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPerCharge, pulseWidth, smallestPulse, stageFault } from './quantities.ts'

/** Whether the stages can do what they are asked: nothing wrong, or the first thing that is, by number. */
export const about = {
  name: 'What keeps the stages from their work',
  in: {
    primaryPulse: role(pulseWidth, 't_1', 'Pulse of a primary'), secondaryPulse: role(pulseWidth, 't_2', 'Pulse of a secondary'), primaryLeast: role(smallestPulse, 't_1min', 'Smallest pulse of a primary'),
    secondaryLeast: role(smallestPulse, 't_2min', 'Smallest pulse of a secondary'), longest: role(pulseWidth, 't_max', 'Longest pulse allowed'), wanted: role(fuelPerCharge, 'm_w', 'Fuel wanted of the secondaries by the blend'),
    given: role(fuelPerCharge, 'm_2', 'Fuel of the secondaries'),
  },
  out: stageFault,
  steps: [
    '4: a pulse is longer than the turn allows: the fuel does not get in.', '3: a primary is asked for less than it can repeat.', '2: secondaries that should work have to wait, because the primaries could not step down so far.',
    '1: the secondaries are held at their least, above what the blend asks.', '0: all as planned.',
  ],
  source: ['definition', 'the first that applies, gravest first'],
} as const satisfies About

/** Pulses at their limit are within it: rounding must not make a fault of the very pulse that the plan holds. */
const slack = 1e-9
export const stageState = formula<typeof about>('stage-state', {}, ({ primaryPulse, secondaryPulse, primaryLeast, secondaryLeast, longest, wanted, given }) => {
  if (primaryPulse > longest + slack || secondaryPulse > longest + slack) return 4
  if (primaryPulse < primaryLeast - slack) return 3
  if (wanted > 0 && given === 0) return 2
  return given > 0 && secondaryPulse <= secondaryLeast + slack && given > wanted * (1 + slack) ? 1 : 0
})

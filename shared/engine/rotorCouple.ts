import { formula, type About } from '../formula/formula.ts'
import { rotorCouple as couple, rotorLoad, rotorSpacing } from './quantities.ts'

/** Turning couple that two rotors half a turn apart put on their shaft. */
export const about = {
  name: 'Couple of two opposed rotors',
  in: { load: rotorLoad, spacing: rotorSpacing },
  out: couple,
  equation: 'load * spacing',
  source: ['derived', 'two equal, opposite forces a distance apart: their sum is nothing, their couple is not'],
  notes: 'It turns with the shaft; counterweights in front of and behind the rotors take it up.',
} as const satisfies About

export const rotorCouple = formula<typeof about>('rotor-couple', {}, ({ load, spacing }) => load * spacing)

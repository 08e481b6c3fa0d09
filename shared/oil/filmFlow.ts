import { formula, type About } from '../formula/formula.ts'
import { bearingLength, bearingSpeed, flowVariable, journalDiameter, oilFlow, radialClearance } from './quantities.ts'

/** Oil that the turning journal draws through its film. */
export const about = {
  name: 'Oil drawn through a film',
  in: { variable: flowVariable, diameter: journalDiameter, clearance: radialClearance, speed: bearingSpeed, length: bearingLength },
  out: oilFlow,
  equation: 'variable * diameter / 2 * clearance * speed / (2 * pi) * length',
  source: ['raimondi-boyd', 'flow variable Q / (r c N l)'],
} as const satisfies About

export const filmFlow = formula<typeof about>('film-flow', {}, ({ variable, diameter, clearance, speed, length }) =>
  ((variable * diameter) / 2) * clearance * (speed / (2 * Math.PI)) * length)

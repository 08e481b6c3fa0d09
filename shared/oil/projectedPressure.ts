import { formula, type About } from '../formula/formula.ts'
import { bearingLength, bearingLoad, bearingPressure, journalDiameter } from './quantities.ts'

/** Load over the projected area of a bearing. */
export const about = {
  name: 'Load per projected area',
  in: { load: bearingLoad, diameter: journalDiameter, length: bearingLength },
  out: bearingPressure,
  equation: 'load / (diameter * length)',
  source: ['definition', 'P = W / (2 r l)'],
} as const satisfies About

export const projectedPressure = formula<typeof about>('projected-pressure', {}, ({ load, diameter, length }) => load / (diameter * length))

import { formula, type About } from '../formula/formula.ts'
import { soundSpeed } from '../media/quantities.ts'
import { ductLength, tunedFrequency } from './quantities.ts'

/** Lowest frequency of a pipe closed at one end, as a runner is while its port is shut. */
export const about = {
  name: 'Frequency of a pipe closed at one end',
  in: { soundSpeed, length: ductLength },
  out: tunedFrequency,
  equation: 'soundSpeed / (4 * length)',
  source: ['kinsler', 'chapter 10, pipe closed at one end'],
  notes: 'Source states no range. Overtones at odd multiples only; the length includes the end correction of the open end.',
} as const satisfies About

export const closedPipeFrequency = formula<typeof about>('closed-pipe-frequency', {}, ({ soundSpeed: c, length }) => c / (4 * length))

import { formula, type About } from '../formula/formula.ts'
import { soundSpeed } from '../media/quantities.ts'
import { ductLength, tunedFrequency } from './quantities.ts'

/** Lowest frequency of a pipe open at both ends. */
export const about = {
  name: 'Frequency of an open pipe',
  in: { soundSpeed, length: ductLength },
  out: tunedFrequency,
  equation: 'soundSpeed / (2 * length)',
  source: ['kinsler', 'chapter 10, open pipe'],
  notes: 'Source states no range. Overtones at every multiple; the length includes the end corrections.',
} as const satisfies About

export const openPipeFrequency = formula<typeof about>('open-pipe-frequency', {}, ({ soundSpeed: c, length }) => c / (2 * length))

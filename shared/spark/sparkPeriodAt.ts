import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { sparkPeriod, sparksPerTurn } from './quantities.ts'

/** Time from one spark of a coil to its next. `2 π / (ω k)`, seconds: 7.5 ms at 8,000 rpm with a coil for each plug. */
export const about = {
  name: 'Time from spark to spark',
  in: { speed: shaftSpeed, sparks: sparksPerTurn },
  out: sparkPeriod,
  equation: '2 * pi / (speed * sparks)',
  source: ['derived', 'one spark per plug and shaft turn'],
} as const satisfies About

export const sparkPeriodAt = formula<typeof about>('spark-period-at', {}, ({ speed, sparks }) => (2 * Math.PI) / (speed * sparks))

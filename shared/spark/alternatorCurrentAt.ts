import { formula, type About } from '../formula/formula.ts'
import { alternatorCurrent, alternatorCurve, alternatorSpeed } from './quantities.ts'

/**
 * Current of an alternator at its speed, read from its curve in straight lines between the points. Below the first point nothing is
 * stated, so nothing is counted on; above the last point the current stays. Amperes.
 */
export const about = {
  name: 'Alternator current at a speed',
  in: { curve: alternatorCurve, speed: alternatorSpeed },
  out: alternatorCurrent,
  steps: [
    'Below the first speed of the curve the current is nothing.',
    'Between two points it lies on the straight line that joins them.',
    'Above the last speed it is that of the last point.',
  ],
  source: ['iso-8854', 'characteristic curve of current over speed at constant voltage'],
  notes: 'The curve is the maker’s, at the temperature and voltage of the test.',
} as const satisfies About

export const alternatorCurrentAt = formula<typeof about>('alternator-current-at', {}, ({ curve: { x, y }, speed }) => {
  if (speed < x[0]!) return 0
  for (let i = 1; i < x.length; i++) {
    if (speed <= x[i]!) return y[i - 1]! + ((y[i]! - y[i - 1]!) * (speed - x[i - 1]!)) / (x[i]! - x[i - 1]!)
  }
  return y[y.length - 1]!
})

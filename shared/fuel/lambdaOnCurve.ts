import { lambda, lambdaCurve, manifoldPressure } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { hermiteAt, monotoneSlopes } from '../numerics/monotone.ts'

/** Lambda that the sheet asks at a manifold pressure: between the points of its curve, level beyond its ends. */
export const about = {
  name: 'Lambda at a manifold pressure',
  in: { curve: lambdaCurve, manifold: manifoldPressure },
  out: lambda,
  steps: ['Between two points of the curve a monotone cubic is laid.', 'Beyond the ends the value of the end holds.'],
  source: ['common-practice', 'the reader’s own curve'],
} as const satisfies About

export const lambdaOnCurve = formula<typeof about>('lambda-on-curve', {}, ({ curve: { x, y }, manifold }) =>
  hermiteAt(x, y, monotoneSlopes(x, y), Math.min(Math.max(manifold, x[0]!), x[x.length - 1]!)))

/**
 * Monotone cubic interpolation: a curve through points that rises only where they rise, so that it never overshoots them.
 * Slopes are the weighted harmonic means of Fritsch and Butland, ends by the three-point formula, held to the shape.
 * Source: F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304; F. N. Fritsch, PCHIP, UCRL-87285 (1982).
 */
export function monotoneSlopes(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const n = x.length
  const d = new Float64Array(n)
  if (n < 2) return d
  const h = (i: number): number => x[i + 1]! - x[i]!
  const secant = (i: number): number => (y[i + 1]! - y[i]!) / h(i)
  if (n === 2) return d.fill(secant(0))
  for (let i = 1; i < n - 1; i++) {
    const before = secant(i - 1)
    const after = secant(i)
    if (before * after <= 0) continue
    const w1 = 2 * h(i) + h(i - 1)
    const w2 = h(i) + 2 * h(i - 1)
    d[i] = (w1 + w2) / (w1 / before + w2 / after)
  }
  d[0] = endSlope(h(0), h(1), secant(0), secant(1))
  d[n - 1] = endSlope(h(n - 2), h(n - 3), secant(n - 2), secant(n - 3))
  return d
}

/** One-sided three-point slope, cut back where it would break the shape. */
function endSlope(h0: number, h1: number, s0: number, s1: number): number {
  const slope = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1)
  if (slope * s0 <= 0) return 0
  return s0 * s1 <= 0 && Math.abs(slope) > 3 * Math.abs(s0) ? 3 * s0 : slope
}

/** Index of the interval that holds `at`; the first or last one beyond the ends. */
export function intervalOf(x: ArrayLike<number>, at: number): number {
  let low = 0
  let high = x.length - 1
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (x[middle]! <= at) low = middle
    else high = middle
  }
  return low
}

/** Value at `at` of the curve through (x, y) with slopes d. Beyond the ends it goes straight on. */
export function hermiteAt(x: ArrayLike<number>, y: ArrayLike<number>, d: ArrayLike<number>, at: number): number {
  const last = x.length - 1
  if (at <= x[0]!) return y[0]! + d[0]! * (at - x[0]!)
  if (at >= x[last]!) return y[last]! + d[last]! * (at - x[last]!)
  const i = intervalOf(x, at)
  const h = x[i + 1]! - x[i]!
  const t = (at - x[i]!) / h
  const u = 1 - t
  return u * u * ((1 + 2 * t) * y[i]! + t * h * d[i]!) + t * t * ((1 + 2 * u) * y[i + 1]! - u * h * d[i + 1]!)
}

/** Slope of the same curve. */
export function hermiteSlopeAt(x: ArrayLike<number>, y: ArrayLike<number>, d: ArrayLike<number>, at: number): number {
  const last = x.length - 1
  if (at <= x[0]!) return d[0]!
  if (at >= x[last]!) return d[last]!
  const i = intervalOf(x, at)
  const h = x[i + 1]! - x[i]!
  const t = (at - x[i]!) / h
  const u = 1 - t
  return (6 * t * u * (y[i + 1]! - y[i]!)) / h + u * (1 - 3 * t) * d[i]! + t * (3 * t - 2) * d[i + 1]!
}

export type MonotoneCurve = { readonly at: (x: number) => number; readonly slope: (x: number) => number }

/** A monotone curve through points in rising order of x, straight beyond its ends. */
export function monotone(x: ArrayLike<number>, y: ArrayLike<number>): MonotoneCurve {
  const d = monotoneSlopes(x, y)
  return { at: (at) => hermiteAt(x, y, d, at), slope: (at) => hermiteSlopeAt(x, y, d, at) }
}

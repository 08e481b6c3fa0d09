/** A root that was bracketed and found, with what is left of the function there. */
export type Found = { readonly x: number; readonly residual: number; readonly steps: number }

/**
 * Root of a continuous function inside a bracket, by Brent's method: inverse quadratic interpolation and secant steps, each kept
 * only where it does better than halving.
 * @param a,b ends of the bracket, where f has opposite signs
 * @param tolerance in x, absolute
 * @throws RangeError where the signs do not differ
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4
 */
export function bracketedRoot(f: (x: number) => number, a: number, b: number, tolerance: number, fa = f(a), fb = f(b)): Found {
  if (fa === 0) return { x: a, residual: 0, steps: 0 }
  if (fb === 0) return { x: b, residual: 0, steps: 0 }
  if (fa > 0 === fb > 0) throw new RangeError('no change of sign in the bracket')
  let c = a, fc = fa, d = b - a, e = d
  for (let steps = 1; steps <= 200; steps++) {
    if (Math.abs(fc) < Math.abs(fb)) { a = b; b = c; c = a; fa = fb; fb = fc; fc = fa }
    const enough = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= enough || fb === 0) return { x: b, residual: fb, steps }
    if (Math.abs(e) >= enough && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa
      let p: number, q: number
      if (a === c) { p = 2 * half * s; q = 1 - s } else {
        const u = fa / fc, r = fb / fc
        p = s * (2 * half * u * (u - r) - (b - a) * (r - 1))
        q = (u - 1) * (r - 1) * (s - 1)
      }
      if (p > 0) q = -q; else p = -p
      if (2 * p < Math.min(3 * half * q - Math.abs(enough * q), Math.abs(e * q))) { e = d; d = p / q } else { d = half; e = half }
    } else { d = half; e = half }
    a = b; fa = fb
    b += Math.abs(d) > enough ? d : Math.sign(half) * enough
    fb = f(b)
    if (fb > 0 === fc > 0) { c = a; fc = fa; d = b - a; e = d }
  }
  return { x: b, residual: fb, steps: 200 }
}

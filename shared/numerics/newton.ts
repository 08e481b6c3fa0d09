import { solveLinear } from './linear.ts'

export type System = (x: Float64Array, out: Float64Array) => void
export type NewtonOptions = {
  /** Size of a natural change of each unknown: steps and differences are measured in it. */
  readonly scale: readonly number[]
  readonly lower: readonly number[]
  readonly upper: readonly number[]
  /** Largest absolute value left in any equation. Equations are best written so that 1 is a large miss. */
  readonly tolerance: number
  readonly maxSteps?: number
}
/** `steps` counts accepted steps; `residual` is the largest absolute value left in any equation. */
export type Solved = { readonly x: number[]; readonly residual: number; readonly converged: boolean; readonly steps: number }

/** Relative difference for the Jacobian: near the square root of the working precision, where truncation and rounding meet. */
const difference = 1e-7

/**
 * Root of a small system inside bounds: Newton's step on a finite-difference Jacobian, halved until the sum of squares falls,
 * Broyden's update between Jacobians while it does well, and a damped least-squares step where Newton's own leads nowhere.
 * An unknown held by a bound that its step would cross is left out of the step.
 * @param f writes the equations' values at x into out; NaN means there is no value there, and the step is shortened
 * @throws RangeError where there is no value at the start
 * Source: J. E. Dennis, R. B. Schnabel, Numerical Methods for Unconstrained Optimization and Nonlinear Equations (1996),
 * chapters 6 (line search), 8 (Broyden), 10.2 (damped least squares)
 */
export function newton(f: System, start: readonly number[], options: NewtonOptions): Solved {
  const { scale, lower, upper, tolerance, maxSteps = 40 } = options
  const n = start.length
  const x = new Float64Array(n), r = new Float64Array(n), there = new Float64Array(n), rThere = new Float64Array(n)
  const jacobian = new Float64Array(n * n), work = new Float64Array(n * n), step = new Float64Array(n)
  const held = new Uint8Array(n)
  for (let i = 0; i < n; i++) x[i] = clamp(start[i]!, lower[i]!, upper[i]!)
  f(x, r)
  let merit = squares(r)
  if (Number.isNaN(merit)) throw new RangeError('the equations have no value at the start')
  let exact: boolean = differences(f, x, r, jacobian, there, rThere, options)

  let steps = 0
  while (largest(r) > tolerance && steps < maxSteps) {
    let next = Infinity
    if (newtonStep()) next = search()
    if (!(next < merit) && !exact) { exact = differences(f, x, r, jacobian, there, rThere, options); continue }
    for (let damping = 1e-6; !(next < merit) && damping < 1e8; damping *= 100) if (dampedStep(damping)) next = tryStep(1)
    if (!(next < merit)) break
    const fast = next < merit * 0.04
    if (fast) broyden()
    x.set(there); r.set(rThere)
    merit = next
    steps++
    if (largest(r) <= tolerance) break
    exact = fast ? false : differences(f, x, r, jacobian, there, rThere, options)
  }
  return { x: [...x], residual: largest(r), converged: largest(r) <= tolerance, steps }

  /** Newton's step in scaled unknowns; again without those that would leave through a bound on which they stand. */
  function newtonStep(): boolean {
    held.fill(0)
    for (let pass = 0; pass <= n; pass++) {
      if (pass > 0) return dampedStep(0)
      work.set(jacobian)
      for (let i = 0; i < n; i++) step[i] = -r[i]!
      if (!solveLinear(work, step, n)) return false
      if (!hold()) return true
    }
    return true
  }
  /** Minimises |J s + r|² + damping |s|² over the unknowns that are free. */
  function dampedStep(damping: number): boolean {
    if (damping > 0) held.fill(0)
    for (let pass = 0; pass <= n; pass++) {
      let size = 0
      for (let j = 0; j < n * n; j++) size = Math.max(size, jacobian[j]! * jacobian[j]!)
      for (let i = 0; i < n; i++) {
        let g = 0
        for (let k = 0; k < n; k++) g -= jacobian[k * n + i]! * r[k]!
        step[i] = held[i] ? 0 : g
        for (let j = 0; j < n; j++) {
          let sum = 0
          for (let k = 0; k < n; k++) sum += jacobian[k * n + i]! * jacobian[k * n + j]!
          work[i * n + j] = held[i] || held[j] ? (i === j ? 1 : 0) : sum + (i === j ? damping * size : 0)
        }
      }
      if (!solveLinear(work, step, n)) return false
      if (!hold()) return true
    }
    return false
  }
  /** Marks unknowns that stand on a bound and would cross it. True where one was newly marked. */
  function hold(): boolean {
    let any = false
    for (let i = 0; i < n; i++) if (!held[i] && ((x[i] === lower[i] && step[i]! < 0) || (x[i] === upper[i] && step[i]! > 0))) { held[i] = 1; any = true }
    return any
  }
  function tryStep(part: number): number {
    for (let i = 0; i < n; i++) there[i] = clamp(x[i]! + part * step[i]! * scale[i]!, lower[i]!, upper[i]!)
    f(there, rThere)
    return squares(rThere)
  }
  /** Takes the whole step if it does well, else shorter ones: the minimum of a parabola through what is known, or a tenth. */
  function search(): number {
    let part = 1
    for (let tries = 0; tries < 12; tries++) {
      const m = tryStep(part)
      // Newton's direction falls at twice the merit; a ten-thousandth of that is asked.
      if (m <= merit * (1 - 2e-4 * part)) return m
      const parabola = Number.isFinite(m) ? (merit * part * part) / (m - merit + 2 * merit * part) : part * 0.3
      part = clamp(parabola, part * 0.1, part * 0.5)
    }
    return Infinity
  }
  /** Corrects the Jacobian so that it explains the step just taken. */
  function broyden(): void {
    let length = 0
    for (let j = 0; j < n; j++) { step[j] = (there[j]! - x[j]!) / scale[j]!; length += step[j]! * step[j]! }
    if (length === 0) return
    for (let i = 0; i < n; i++) {
      let miss = rThere[i]! - r[i]!
      for (let j = 0; j < n; j++) miss -= jacobian[i * n + j]! * step[j]!
      for (let j = 0; j < n; j++) jacobian[i * n + j] = jacobian[i * n + j]! + (miss * step[j]!) / length
    }
  }
}

/** Jacobian by one-sided differences in scaled unknowns, away from a bound, and to the other side where there is no value. */
function differences(f: System, x: Float64Array, r: Float64Array, jacobian: Float64Array, there: Float64Array, rThere: Float64Array, { scale, lower, upper }: NewtonOptions): true {
  const n = x.length
  there.set(x)
  for (let j = 0; j < n; j++) {
    const h = difference * Math.max(scale[j]!, Math.abs(x[j]!))
    for (const side of x[j]! + h <= upper[j]! ? [1, -1] : [-1, 1]) {
      there[j] = x[j]! + side * h
      if (there[j]! < lower[j]! || there[j]! > upper[j]!) continue
      f(there, rThere)
      const taken = (there[j]! - x[j]!) / scale[j]!
      for (let i = 0; i < n; i++) jacobian[i * n + j] = (rThere[i]! - r[i]!) / taken
      if (!Number.isNaN(squares(rThere))) break
    }
    there[j] = x[j]!
  }
  return true
}

const clamp = (v: number, low: number, high: number): number => (v < low ? low : v > high ? high : v)
function squares(r: Float64Array): number {
  let sum = 0
  for (let i = 0; i < r.length; i++) sum += r[i]! * r[i]!
  return sum
}
function largest(r: Float64Array): number {
  let most = 0
  for (let i = 0; i < r.length; i++) most = Math.max(most, Math.abs(r[i]!))
  return most
}

import { dormandPrinceStep, stagesFor, within, type Rates } from './dormandPrince.ts'
import { bracketedRoot } from './root.ts'

export type Span = {
  readonly from: number
  readonly to: number
  readonly start: readonly number[]
  /** Error allowed in each step: relative to the value, and absolute by component (or one for all). */
  readonly relative: number
  readonly absolute: number | readonly number[]
  /** Times at which values are wanted, in order; without them, the end of every step. */
  readonly at?: readonly number[]
  /** Stops where this crosses zero: a temperature less its limit. */
  readonly until?: (t: number, y: Float64Array) => number
  /** No step longer than this: what switches between steps must not be stepped over. */
  readonly longest?: number
  readonly maxSteps?: number
}
export type Course = {
  readonly t: readonly number[]
  /** One row for each time in `t`. */
  readonly y: readonly (readonly number[])[]
  readonly ended: 'at its end' | 'at the event' | 'too many steps'
  /** Where it ended, whether or not that time was asked for. */
  readonly last: { readonly t: number; readonly y: readonly number[] }
  readonly steps: number
  readonly rejected: number
}

/**
 * Integrates dy/dt = f(t, y) by the Dormand-Prince pair 5(4): each step as long as its estimated error allows, values between
 * steps by the pair's own continuous extension. Explicit: a stiff system costs many steps and ends as `too many steps`.
 * @throws RangeError where the rates are no numbers at the start, or the span runs backwards
 * Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), II.4 to II.6
 */
export function integrate(f: Rates, span: Span): Course {
  const { from, to, at, until, longest = Infinity, maxSteps = 100_000 } = span
  if (!(to > from)) throw new RangeError('the end must come after the start')
  const n = span.start.length
  const y = Float64Array.from(span.start)
  const stages = stagesFor(n)
  const inside = new Float64Array(n)
  const times: number[] = [], rows: number[][] = []
  const keep = (t: number, values: Float64Array): void => { times.push(t); rows.push([...values]) }

  let t = from, asked = 0, steps = 0, rejected = 0, before = 1
  f(t, y, stages.k[0]!)
  if (stages.k[0]!.some(Number.isNaN)) throw new RangeError('the rates have no value at the start')
  if (!at) keep(t, y)
  while (at && asked < at.length && at[asked]! <= from) { keep(from, y); asked++ }
  let mark = until?.(t, y) ?? NaN
  let h = Math.min(firstStep(f, span, y, stages.k[0]!), longest)

  while (t < to) {
    if (steps + rejected >= maxSteps) return course('too many steps')
    // A last step that would leave a sliver is stretched to the end.
    const end = t + 1.0001 * h >= to
    const step = end ? to - t : h
    dormandPrinceStep(f, t, y, step, stages)
    const miss = missOf(stages.error, y, stages.y, span)
    if (!(miss <= 1)) {
      rejected++
      before = 1
      h = step * (Number.isFinite(miss) ? Math.max(0.2, 0.9 * miss ** -0.2) : 0.1)
      if (t + h === t) return course('too many steps')
      continue
    }
    steps++
    const reached = end ? to : t + step
    if (until) {
      const now = until(reached, stages.y)
      if (mark !== 0 && (now === 0 || now > 0 !== mark > 0)) {
        const part = now === 0 ? 1 : bracketedRoot((p) => { within(p, y, step, stages, inside); return until(t + p * step, inside) }, 0, 1, 1e-12, mark, now).x
        give(t + part * step, step)
        within(part, y, step, stages, inside)
        t += part * step
        y.set(inside)
        if (!at) keep(t, y)
        return course('at the event')
      }
      mark = now
    }
    give(reached, step)
    t = reached
    y.set(stages.y)
    stages.k[0]!.set(stages.k[6]!)
    if (!at) keep(t, y)
    // Step control with a memory of the last error, which damps hunting.
    const small = Math.max(miss, 1e-10)
    h = Math.min(longest, step * Math.min(5, Math.max(0.2, 0.9 * small ** -0.17 * before ** 0.04)))
    before = small
  }
  return course('at its end')

  function course(ended: Course['ended']): Course { return { t: times, y: rows, ended, last: { t, y: [...y] }, steps, rejected } }
  /** Writes the values asked for up to a time within the step just taken. */
  function give(upTo: number, step: number): void {
    while (at && asked < at.length && at[asked]! <= upTo) {
      within((at[asked]! - t) / step, y, step, stages, inside)
      keep(at[asked]!, inside)
      asked++
    }
  }
}

/** Root mean square of the errors, each over what is allowed. */
function missOf(error: Float64Array, y: Float64Array, next: Float64Array, { relative, absolute }: Span): number {
  let sum = 0
  for (let i = 0; i < error.length; i++) {
    const allowed = (typeof absolute === 'number' ? absolute : absolute[i]!) + relative * Math.max(Math.abs(y[i]!), Math.abs(next[i]!))
    sum += (error[i]! / allowed) ** 2
  }
  return Math.sqrt(sum / error.length)
}

/** A first step from the size of values, rates and their change (Hairer, Nørsett, Wanner, II.4). */
function firstStep(f: Rates, span: Span, y: Float64Array, rates: Float64Array): number {
  const size = (v: Float64Array): number => missOf(v, y, y, span)
  const d0 = size(y), d1 = size(rates)
  const h0 = Math.min(d0 < 1e-5 || d1 < 1e-5 ? 1e-6 * (span.to - span.from) : (0.01 * d0) / d1, span.to - span.from)
  const there = y.map((v, i) => v + h0 * rates[i]!)
  const changed = new Float64Array(y.length)
  f(span.from + h0, there, changed)
  const d2 = size(changed.map((v, i) => v - rates[i]!)) / h0
  const h1 = Math.max(d1, d2) <= 1e-15 ? Math.max(1e-6, h0 * 1e-3) : (0.01 / Math.max(d1, d2)) ** 0.2
  const h = Math.min(100 * h0, h1, span.to - span.from)
  return h > 0 ? h : h0
}

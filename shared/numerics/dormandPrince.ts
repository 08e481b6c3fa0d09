/** A system of first-order equations: writes dy/dt at (t, y) into dy. */
export type Rates = (t: number, y: Float64Array, dy: Float64Array) => void

const c = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1]
const a: readonly (readonly number[])[] = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
]
/** Fifth-order weights less fourth-order ones: the estimate of the error of a step. */
const e = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40]
/** Weights of the dense output. */
const d = [-12715105075 / 11282082432, 0, 87487479700 / 32700410799, -10690763975 / 1880347072, 701980252875 / 199316789632, -1453857185 / 822651844, 69997945 / 29380423]

/** Room for the seven stages of a step; the last stage of one step is the first of the next. */
export type Stages = { readonly k: readonly Float64Array[]; readonly y: Float64Array; readonly error: Float64Array }
export const stagesFor = (n: number): Stages => ({ k: Array.from({ length: 7 }, () => new Float64Array(n)), y: new Float64Array(n), error: new Float64Array(n) })

/**
 * One step of the pair of fifth and fourth order. `stages.k[0]` must hold the rates at (t, y); after it `stages.y` is the
 * fifth-order value at t + h, `stages.error` its difference from the fourth-order one, `stages.k[6]` the rates there.
 * Source: J. R. Dormand, P. J. Prince, A family of embedded Runge-Kutta formulae, J. Comp. Appl. Math. 6 (1980) 19-26;
 * E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), table II.5.2
 */
export function dormandPrinceStep(f: Rates, t: number, y: Float64Array, h: number, stages: Stages): void {
  const { k, y: next, error } = stages
  const n = y.length
  for (let s = 1; s < 7; s++) {
    const row = a[s]!
    for (let i = 0; i < n; i++) {
      let sum = 0
      for (let j = 0; j < s; j++) sum += row[j]! * k[j]![i]!
      next[i] = y[i]! + h * sum
    }
    f(t + c[s]! * h, next, k[s]!)
  }
  for (let i = 0; i < n; i++) {
    let sum = 0
    for (let j = 0; j < 7; j++) sum += e[j]! * k[j]![i]!
    error[i] = h * sum
  }
}

/**
 * Values inside a step just taken, of fourth order: `part` runs from 0 at its start to 1 at its end.
 * Source: Hairer, Nørsett, Wanner (1993), II.6, the continuous extension of their code for this pair
 */
export function within(part: number, y: Float64Array, h: number, stages: Stages, out: Float64Array): void {
  const { k, y: next } = stages
  const rest = 1 - part
  for (let i = 0; i < y.length; i++) {
    let bulge = 0
    for (let j = 0; j < 7; j++) bulge += d[j]! * k[j]![i]!
    const rise = next[i]! - y[i]!
    const bend = h * k[0]![i]! - rise
    const third = rise - h * k[6]![i]! - bend
    out[i] = y[i]! + part * (rise + rest * (bend + part * (third + rest * h * bulge)))
  }
}

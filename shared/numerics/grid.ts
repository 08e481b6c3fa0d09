import { intervalOf, monotoneSlopes } from './monotone.ts'

/**
 * A smooth surface over a grid of rows and evenly spaced columns on 0..1, by cubic pieces both ways with monotone slopes.
 * Beyond the grid it goes on straight, value and slope being continuous everywhere.
 */
export type Grid = {
  readonly rows: ArrayLike<number>
  readonly columns: number
  readonly value: Float64Array
  readonly byRow: Float64Array
  readonly byColumn: Float64Array
  readonly byBoth: Float64Array
}

/**
 * @param value row by row, `columns` values in each
 * @param byColumn slope along each row at the same places
 * @param first slopes over rows at the first row, where something outside the grid dictates them; cut to three secants, which keeps the curve monotone
 */
export function gridOf(rows: ArrayLike<number>, columns: number, value: Float64Array, byColumn: Float64Array, first?: ArrayLike<number>): Grid {
  const over = (of: Float64Array, start?: ArrayLike<number>): Float64Array => {
    const slopes = new Float64Array(of.length)
    const column = new Float64Array(rows.length)
    for (let k = 0; k < columns; k++) {
      for (let i = 0; i < rows.length; i++) column[i] = of[i * columns + k]!
      const d = monotoneSlopes(rows, column)
      if (start) d[0] = held(start[k]!, (column[1]! - column[0]!) / (rows[1]! - rows[0]!))
      for (let i = 0; i < rows.length; i++) slopes[i * columns + k] = d[i]!
    }
    return slopes
  }
  return { rows, columns, value, byColumn, byRow: over(value, first), byBoth: over(byColumn) }
}

const held = (slope: number, secant: number): number => (slope * secant <= 0 ? 0 : Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope)

/**
 * Value, slope over rows and slope over columns at one place, written into `out`: a caller in a tight loop keeps one array.
 */
export function gridAt(g: Grid, row: number, column: number, out: Float64Array): void {
  const n = g.rows.length
  const r = row < g.rows[0]! ? g.rows[0]! : row > g.rows[n - 1]! ? g.rows[n - 1]! : row
  const c = column < 0 ? 0 : column > 1 ? 1 : column
  const i = intervalOf(g.rows, r)
  const H = g.rows[i + 1]! - g.rows[i]!
  const t = (r - g.rows[i]!) / H
  const steps = g.columns - 1
  const k = Math.min(steps - 1, Math.floor(c * steps))
  const w = 1 / steps
  const s = c * steps - k
  const a = i * g.columns + k
  const b = a + g.columns
  const q = 1 - t
  // Weights over rows of values and slopes, then their slopes.
  const t0 = q * q * (1 + 2 * t), t1 = t * t * (1 + 2 * q), t2 = q * q * t * H, t3 = -t * t * q * H
  const e1 = (6 * t * q) / H, e2 = q * (1 - 3 * t), e3 = t * (3 * t - 2)
  // At the two columns: value and slope along the row, and how each changes over rows.
  const v0 = t0 * g.value[a]! + t1 * g.value[b]! + t2 * g.byRow[a]! + t3 * g.byRow[b]!
  const v1 = t0 * g.value[a + 1]! + t1 * g.value[b + 1]! + t2 * g.byRow[a + 1]! + t3 * g.byRow[b + 1]!
  const c0 = t0 * g.byColumn[a]! + t1 * g.byColumn[b]! + t2 * g.byBoth[a]! + t3 * g.byBoth[b]!
  const c1 = t0 * g.byColumn[a + 1]! + t1 * g.byColumn[b + 1]! + t2 * g.byBoth[a + 1]! + t3 * g.byBoth[b + 1]!
  const rv0 = e1 * (g.value[b]! - g.value[a]!) + e2 * g.byRow[a]! + e3 * g.byRow[b]!
  const rv1 = e1 * (g.value[b + 1]! - g.value[a + 1]!) + e2 * g.byRow[a + 1]! + e3 * g.byRow[b + 1]!
  const rc0 = e1 * (g.byColumn[b]! - g.byColumn[a]!) + e2 * g.byBoth[a]! + e3 * g.byBoth[b]!
  const rc1 = e1 * (g.byColumn[b + 1]! - g.byColumn[a + 1]!) + e2 * g.byBoth[a + 1]! + e3 * g.byBoth[b + 1]!
  const p = 1 - s
  const s0 = p * p * (1 + 2 * s), s1 = s * s * (1 + 2 * p), s2 = p * p * s * w, s3 = -s * s * p * w
  let value = s0 * v0 + s1 * v1 + s2 * c0 + s3 * c1
  let byRow = s0 * rv0 + s1 * rv1 + s2 * rc0 + s3 * rc1
  let byColumn = (6 * s * p * (v1 - v0)) / w + p * (1 - 3 * s) * c0 + s * (3 * s - 2) * c1
  const cross = (6 * s * p * (rv1 - rv0)) / w + p * (1 - 3 * s) * rc0 + s * (3 * s - 2) * rc1
  const past = row - r
  const beside = column - c
  if (past !== 0 || beside !== 0) {
    value += byRow * past + byColumn * beside + cross * past * beside
    byRow += cross * beside
    byColumn += cross * past
  }
  out[0] = value
  out[1] = byRow
  out[2] = byColumn
}

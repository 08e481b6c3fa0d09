import { describe, expect, test } from 'vitest'
import { gridAt, gridOf, type Grid } from '@trochoid/compute/numerics/grid.ts'
import { monotone, monotoneSlopes } from '@trochoid/compute/numerics/monotone.ts'
import reference from '../../reference/boost.json' with { type: 'json' }

const out = new Float64Array(3)
const at = (g: Grid, row: number, column: number): [number, number, number] => { gridAt(g, row, column, out); return [out[0]!, out[1]!, out[2]!] }
const evenly = (n: number): number[] => Array.from({ length: n }, (_, k) => k / (n - 1))

/** A grid over a function, slopes along rows by monotone cubics. */
function gridOver(rows: readonly number[], columns: number, f: (r: number, c: number) => number, first?: readonly number[]): Grid {
  const value = new Float64Array(rows.length * columns)
  const slope = new Float64Array(rows.length * columns)
  rows.forEach((r, i) => {
    const line = evenly(columns).map((c) => f(r, c))
    value.set(line, i * columns)
    slope.set(monotoneSlopes(evenly(columns), line), i * columns)
  })
  return gridOf(rows, columns, value, slope, first)
}

test('a function that is straight both ways comes out exactly, inside and outside', () => {
  const g = gridOver([1, 2, 4, 5], 4, (r, c) => 3 + 2 * r - 5 * c + 0.5 * r * c)
  for (const r of [-1, 0.5, 1, 1.3, 2, 3.7, 5, 6.5]) for (const c of [-0.7, 0, 0.2, 1 / 3, 0.5, 0.9, 1, 1.6]) {
    const [value, byRow, byColumn] = at(g, r, c)
    expect(value).toBeCloseTo(3 + 2 * r - 5 * c + 0.5 * r * c, 10)
    expect(byRow).toBeCloseTo(2 + 0.5 * c, 10)
    expect(byColumn).toBeCloseTo(-5 + 0.5 * r, 10)
  }
})
describe('on a curved surface', () => {
  const rows = [0.4, 0.5, 0.7, 0.8, 1]
  const f = (r: number, c: number): number => r * r * (1.2 - 0.6 * c ** 3) + 0.1 * r * c
  const g = gridOver(rows, 9, f)
  test('it has the values of its nodes', () => {
    rows.forEach((r) => evenly(9).forEach((c) => expect(at(g, r, c)[0]).toBeCloseTo(f(r, c), 12)))
  })
  test('along a column of nodes it is the monotone curve over rows, along a row the one over columns', () => {
    const column = monotone(rows, rows.map((r) => f(r, 0.375)))
    const row = monotone(evenly(9), evenly(9).map((c) => f(0.7, c)))
    for (const u of [0.43, 0.55, 0.61, 0.78, 0.93]) {
      expect(at(g, u, 0.375)[0]).toBeCloseTo(column.at(u), 12)
      expect(at(g, u, 0.375)[1]).toBeCloseTo(column.slope(u), 12)
      expect(at(g, 0.7, u)[0]).toBeCloseTo(row.at(u), 12)
      expect(at(g, 0.7, u)[2]).toBeCloseTo(row.slope(u), 12)
    }
  })
  test('its slopes are the slopes of its values, also beyond its edges', () => {
    const e = 1e-6
    for (const r of [0.3, 0.45, 0.52, 0.77, 0.99, 1.2]) for (const c of [-0.2, 0.06, 0.4, 0.81, 1.3]) {
      const [, byRow, byColumn] = at(g, r, c)
      expect(byRow).toBeCloseTo((at(g, r + e, c)[0] - at(g, r - e, c)[0]) / (2 * e), 6)
      expect(byColumn).toBeCloseTo((at(g, r, c + e)[0] - at(g, r, c - e)[0]) / (2 * e), 6)
    }
  })
  test('value and slopes are continuous across nodes and edges', () => {
    const e = 1e-9
    for (const [r, c, dr, dc] of [[0.5, 0.3, e, 0], [0.6, 0.25, 0, e], [0.4, 0.3, e, 0], [1, 0.7, e, 0], [0.6, 0, 0, e], [0.6, 1, 0, e], [1, 1, e, e]] as const) {
      const before = at(g, r - dr, c - dc)
      const after = at(g, r + dr, c + dc)
      before.forEach((x, i) => expect(x).toBeCloseTo(after[i]!, 6))
    }
  })
})
test('over rows it follows SciPy’s PCHIP', () => {
  for (const { x, y, at: places, value } of reference.curves) {
    const g = gridOver(x, 3, (r) => y[x.indexOf(r)]!)
    places.forEach((p, i) => expect(at(g, p, 0.4)[0]).toBeCloseTo(value[i]!, 9))
  }
})
test('a slope asked at the first row is taken, but never more than keeps the curve rising', () => {
  const f = (r: number): number => r * r
  expect(at(gridOver([1, 2, 3], 2, f, [2, 2]), 1, 0.5)[1]).toBe(2)
  expect(at(gridOver([1, 2, 3], 2, f, [50, 50]), 1, 0.5)[1]).toBe(9)
  expect(at(gridOver([1, 2, 3], 2, f, [-4, -4]), 1, 0.5)[1]).toBe(0)
  expect(at(gridOver([1, 2, 3], 2, (r) => -r * r, [-2, -2]), 1, 0.5)[1]).toBe(-2)
  expect(at(gridOver([1, 2, 3], 2, (r) => -r * r, [-50, -50]), 1, 0.5)[1]).toBe(-9)
})

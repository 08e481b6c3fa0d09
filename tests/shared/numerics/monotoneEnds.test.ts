import { expect, test } from 'vitest'
import { gridAt, gridOf } from '@trochoid/compute/numerics/grid.ts'
import { monotoneSlopes } from '@trochoid/compute/numerics/monotone.ts'

// F. N. Fritsch, PCHIP, UCRL-87285 (1982): an end slope that breaks the shape is cut to three secants, one against it to nothing.
test('an end slope is cut to three secants where the curve turns, and to zero where it would turn by itself', () => {
  expect(monotoneSlopes([0, 1, 2], [0, 2, -20])[0]).toBe(6)
  expect(monotoneSlopes([0, 1, 2], [0, -2, 20])[0]).toBe(-6)
  expect(monotoneSlopes([0, 1, 2], [-20, 2, 0])[2]).toBe(-6)
  expect(monotoneSlopes([0, 1, 2], [0, 1, 9])[0]).toBe(0)
  expect(monotoneSlopes([0, 1, 2], [0, 1, 1.5])[0]).toBeCloseTo(1.25, 14)
})
test('a level piece has level ends', () => {
  expect([...monotoneSlopes([0, 1, 3, 4], [0, 1, 1, 2])].slice(1, 3)).toEqual([0, 0])
})

const rows = [1, 2.5, 3]
const columns = 4
const value = Float64Array.from(rows.flatMap((r) => [0, 1, 2, 3].map((k) => r * r * (1 + k * k))))
const byColumn = Float64Array.from(rows.flatMap((r) => [0, 1, 2, 3].map((k) => 6 * k * r * r)))
const out = new Float64Array(3)
const at = (g: ReturnType<typeof gridOf>, r: number, c: number): number => { gridAt(g, r, c, out); return out[0]! }

test('beyond a curved grid the surface is straight in each direction, though it curves inside', () => {
  const g = gridOf(rows, columns, value, byColumn)
  const bend = (r: number, c: number, dr: number, dc: number): number => at(g, r + dr, c + dc) - 2 * at(g, r, c) + at(g, r - dr, c - dc)
  for (const r of [0.2, 0.6, 3.4, 5]) expect(bend(r, 0.4, 0.1, 0)).toBeCloseTo(0, 10)
  for (const c of [-0.8, -0.3, 1.2, 2]) expect(bend(1.7, c, 0, 0.1)).toBeCloseTo(0, 10)
  expect(Math.abs(bend(1.7, 0.4, 0.1, 0))).toBeGreaterThan(1e-3)
  expect(Math.abs(bend(1.7, 0.5, 0, 0.1))).toBeGreaterThan(1e-3)
})
test('a slope asked at the first row is held to three secants of the first interval, whatever its length', () => {
  const first = (slope: number): number => { gridAt(gridOf(rows, columns, value, byColumn, Array<number>(columns).fill(slope)), 1, 0, out); return out[1]! }
  // Over the first interval r² goes from 1 to 6.25 in 1.5: a secant of 3.5.
  expect(first(2)).toBe(2)
  expect(first(10)).toBe(10)
  expect(first(99)).toBe(10.5)
})

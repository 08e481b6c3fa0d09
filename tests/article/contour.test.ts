import { expect, test } from 'vitest'
import fc from 'fast-check'
import { contour } from '../../src/article/figures/plot/contour.ts'

const steps = (count: number, from: number, to: number) => Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1))
const grid = (x: readonly number[], y: readonly number[], of: (x: number, y: number) => number | null) => y.map((b) => x.map((a) => of(a, b)))

test('on a plane every place of a line has the level, to rounding', () => {
  const x = steps(9, 0, 4), y = steps(7, -1, 2)
  fc.assert(fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.double({ min: 0.1, max: 3, noNaN: true }), fc.double({ min: -5, max: 8, noNaN: true }), (a, b, level) => {
    for (const [px, py] of contour(x, y, grid(x, y, (u, v) => a * u + b * v), level).flat()) expect(a * px + b * py).toBeCloseTo(level, 9)
  }))
})
test('a straight rise gives one line from edge to edge', () => {
  const x = steps(6, 0, 5), y = steps(5, 0, 4)
  const lines = contour(x, y, grid(x, y, (u) => u), 2.5)
  expect(lines).toHaveLength(1)
  expect(lines[0]).toHaveLength(5)
  expect(lines[0]!.map(([, v]) => v).sort()).toEqual(y)
})
test('round a hill the line closes on itself, and its radius is that of the level', () => {
  const x = steps(41, -2, 2)
  const lines = contour(x, x, grid(x, x, (u, v) => -(u * u + v * v)), -1)
  expect(lines).toHaveLength(1)
  expect(lines[0]!.at(-1)).toEqual(lines[0]![0])
  for (const [u, v] of lines[0]!) expect(Math.hypot(u, v)).toBeCloseTo(1, 2)
})
test('a level that is not reached gives no line, and a gap none near it', () => {
  const x = steps(5, 0, 4)
  expect(contour(x, x, grid(x, x, (u) => u), 9)).toEqual([])
  expect(contour(x, x, grid(x, x, (u) => (u === 2 || u === 3 ? null : u)), 2.5)).toEqual([])
})

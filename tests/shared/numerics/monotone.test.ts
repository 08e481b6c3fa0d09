import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hermiteAt, hermiteSlopeAt, intervalOf, monotone, monotoneSlopes } from '@trochoid/compute/numerics/monotone.ts'
import reference from '../../reference/boost.json' with { type: 'json' }

describe.each(reference.curves.map((c) => [c.name, c] as const))('data set %s', (_, { x, y, at, value, slope, slopes }) => {
  test('has the slopes that SciPy’s PCHIP has', () => {
    const d = monotoneSlopes(x, y)
    slopes.forEach((s, i) => expect(d[i]).toBeCloseTo(s, 9))
  })
  test('has the values and slopes that SciPy’s PCHIP has', () => {
    const curve = monotone(x, y)
    at.forEach((p, i) => {
      expect(curve.at(p)).toBeCloseTo(value[i]!, 9)
      expect(curve.slope(p)).toBeCloseTo(slope[i]!, 8)
    })
  })
})

test('goes straight on beyond its ends', () => {
  const x = [1, 2, 4]
  const y = [3, 5, 6]
  const d = monotoneSlopes(x, y)
  expect(hermiteAt(x, y, d, -1)).toBeCloseTo(3 - 2 * d[0]!, 12)
  expect(hermiteAt(x, y, d, 7)).toBeCloseTo(6 + 3 * d[2]!, 12)
  expect(hermiteSlopeAt(x, y, d, -1)).toBe(d[0])
  expect(hermiteSlopeAt(x, y, d, 7)).toBe(d[2])
  expect(hermiteAt(x, y, d, 1)).toBe(3)
  expect(hermiteAt(x, y, d, 4)).toBe(6)
})
test('two points make a straight line, one point a level', () => {
  expect([...monotoneSlopes([1, 3], [2, 8])]).toEqual([3, 3])
  expect(monotone([1, 3], [2, 8]).at(2)).toBe(5)
  expect([...monotoneSlopes([1], [2])]).toEqual([0])
})
test('a straight line stays straight', () => {
  const { at, slope } = monotone([0, 1, 5, 7], [1, 3, 11, 15])
  for (const p of [-2, 0, 0.3, 1, 4.4, 7, 9]) { expect(at(p)).toBeCloseTo(1 + 2 * p, 12); expect(slope(p)).toBeCloseTo(2, 12) }
})
test('finds the interval, and the outer ones beyond the ends', () => {
  const x = [0, 1, 2, 5]
  expect([-1, 0, 0.5, 1, 1.9, 2, 4, 5, 9].map((at) => intervalOf(x, at))).toEqual([0, 0, 0, 1, 1, 2, 2, 2, 2])
})
test('never overshoots and rises where its points rise', () => {
  const rising = fc.array(fc.tuple(fc.double({ min: 0.05, max: 3, noNaN: true }), fc.double({ min: 0, max: 5, noNaN: true })), { minLength: 2, maxLength: 9 })
  fc.assert(fc.property(rising, fc.double({ min: 0, max: 1, noNaN: true }), (steps, u) => {
    let a = 0, b = 0
    const x = [0, ...steps.map(([h]) => (a += h))]
    const y = [0, ...steps.map(([, k]) => (b += k))]
    const { at, slope } = monotone(x, y)
    const p = u * a
    const i = intervalOf(x, p)
    expect(slope(p)).toBeGreaterThanOrEqual(-1e-9)
    expect(at(p)).toBeGreaterThanOrEqual(y[i]! - 1e-9)
    expect(at(p)).toBeLessThanOrEqual(y[i + 1]! + 1e-9)
  }))
})
test('its slope is the slope of its values', () => {
  const { at, slope } = monotone([0, 1, 2.5, 4, 4.5], [0.62, 0.71, 0.76, 0.7, 0.4])
  for (let p = 0.05; p < 4.5; p += 0.1) expect(slope(p)).toBeCloseTo((at(p + 1e-6) - at(p - 1e-6)) / 2e-6, 5)
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { flankArc } from '@trochoid/compute/engine/flankArc.ts'

/** The printed inner envelope drawn as short chords. */
function chords(R: number, e: number): number {
  const at = (v: number): readonly [number, number] => {
    const root = Math.sqrt(1 - ((3 * e) / R) ** 2 * Math.sin(3 * v) ** 2)
    return [
      R * Math.cos(2 * v) + ((3 * e * e) / (2 * R)) * (Math.cos(8 * v) - Math.cos(4 * v)) + e * root * (Math.cos(5 * v) + Math.cos(v)),
      R * Math.sin(2 * v) + ((3 * e * e) / (2 * R)) * (Math.sin(8 * v) + Math.sin(4 * v)) + e * root * (Math.sin(5 * v) - Math.sin(v)),
    ]
  }
  const n = 4000
  let length = 0
  for (let i = 0; i < n; i++) {
    const [x, y] = at(Math.PI / 6 + (i / n) * (Math.PI / 3))
    const [u, v] = at(Math.PI / 6 + ((i + 1) / n) * (Math.PI / 3))
    length += Math.hypot(u - x, v - y)
  }
  return length
}

test('it is the length of the drawn envelope', () => {
  fc.assert(fc.property(fc.double({ min: 0.09, max: 0.15, noNaN: true }), fc.double({ min: 0.008, max: 0.018, noNaN: true }), (generatingRadius, eccentricity) => {
    expect(flankArc({ generatingRadius, eccentricity }) / chords(generatingRadius, eccentricity)).toBeCloseTo(1, 6)
  }), { numRuns: 30 })
})
test('a flank is longer than the straight line between its apexes', () => {
  expect(flankArc({ generatingRadius: 0.105, eccentricity: 0.015 })).toBeGreaterThan(0.105 * Math.sqrt(3))
})

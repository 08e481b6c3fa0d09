import fc from 'fast-check'
import { expect, test } from 'vitest'
import { housingArc } from '@trochoid/compute/engine/housingArc.ts'

/** The trochoid drawn as short chords: another way to the same length. */
function chords(R: number, e: number, turned: number): number {
  const at = (a: number) => [e * Math.cos(3 * a) + R * Math.cos(a), e * Math.sin(3 * a) + R * Math.sin(a)] as const
  const from = Math.PI / 2 + turned / 3 - Math.PI / 3
  const n = 4000
  let length = 0
  for (let i = 0; i < n; i++) {
    const [x, y] = at(from + (i / n) * (2 * Math.PI / 3))
    const [u, v] = at(from + ((i + 1) / n) * (2 * Math.PI / 3))
    length += Math.hypot(u - x, v - y)
  }
  return length
}
const sizes = fc.record({ generatingRadius: fc.double({ min: 0.08, max: 0.15, noNaN: true }), eccentricity: fc.double({ min: 0.008, max: 0.018, noNaN: true }), shaftAngle: fc.double({ min: 0, max: 9.4, noNaN: true }) })

test('it is the length of the drawn curve', () => {
  fc.assert(fc.property(sizes, (x) => {
    expect(housingArc(x) / chords(x.generatingRadius, x.eccentricity, x.shaftAngle)).toBeCloseTo(1, 6)
  }), { numRuns: 30 })
})
test('without eccentricity it is a third of a circle', () => expect(housingArc({ generatingRadius: 0.1, eccentricity: 0, shaftAngle: 1 })).toBeCloseTo((0.2 * Math.PI) / 3, 14))
test('three chambers share the whole housing', () => {
  const at = (shaftAngle: number) => housingArc({ generatingRadius: 0.105, eccentricity: 0.015, shaftAngle })
  const whole = at(0) + at(2 * Math.PI) + at(4 * Math.PI)
  expect(whole).toBeCloseTo(0.6903934, 7)
  expect(at(1) + at(1 + 2 * Math.PI) + at(1 + 4 * Math.PI)).toBeCloseTo(whole, 12)
})

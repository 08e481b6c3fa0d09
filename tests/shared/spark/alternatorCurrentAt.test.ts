import fc from 'fast-check'
import { expect, test } from 'vitest'
import { alternatorCurrentAt } from '@trochoid/compute/spark/alternatorCurrentAt.ts'

const curve = { x: [150, 200, 400], y: [30, 60, 80] }

test('gives the points of the curve, halves between them, nothing below and the last above', () => {
  expect(curve.x.map((speed) => alternatorCurrentAt({ curve, speed }))).toEqual(curve.y)
  expect(alternatorCurrentAt({ curve, speed: 175 })).toBe(45)
  expect(alternatorCurrentAt({ curve, speed: 350 })).toBe(75)
  expect(alternatorCurrentAt({ curve, speed: 149.9 })).toBe(0)
  expect(alternatorCurrentAt({ curve, speed: 5000 })).toBe(80)
})
test('rises where its points rise', () => fc.assert(fc.property(fc.double({ min: 150, max: 500, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), (speed, more) => {
  expect(alternatorCurrentAt({ curve, speed: speed + more })).toBeGreaterThanOrEqual(alternatorCurrentAt({ curve, speed }) - 1e-9)
})))

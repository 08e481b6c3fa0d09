import fc from 'fast-check'
import { expect, test } from 'vitest'
import { plateAngleAt } from '@trochoid/compute/engine/plateAngleAt.ts'
import { shareOfArea } from '@trochoid/compute/engine/shareOfArea.ts'
import { throttleArea } from '@trochoid/compute/engine/throttleArea.ts'

const deg = Math.PI / 180

test('a shut plate leaves nothing open, an open one all but the shaft, and between them area only grows', () => {
  const plate = { bore: 0.08, shaft: 0.01, closed: 6 * deg }
  expect(throttleArea({ ...plate, angle: 6 * deg })).toBeCloseTo(0, 12)
  const open = throttleArea({ ...plate, angle: 90 * deg })
  // The shaft hides a little less than its own rectangle, since the bore is round.
  expect(open).toBeGreaterThan((Math.PI * 0.08 ** 2) / 4 - 0.08 * 0.01)
  expect(open).toBeLessThan((Math.PI * 0.08 ** 2) / 4 - 0.95 * 0.08 * 0.01)
  let before = -1
  for (let x = 0; x <= 1; x += 0.01) {
    const area = throttleArea({ ...plate, angle: plateAngleAt({ position: x, closed: plate.closed }) })
    expect(area).toBeGreaterThanOrEqual(before)
    before = area
  }
  expect(shareOfArea({ area: (Math.PI * 0.08 ** 2) / 4, bore: 0.08 })).toBeCloseTo(1, 12)
})
test('without a shaft the free share is 1 - cos ψ / cos ψ0', () => {
  fc.assert(fc.property(fc.double({ min: 0.11, max: 1.5, noNaN: true }), (angle) => {
    expect(throttleArea({ bore: 0.06, shaft: 1e-9, angle, closed: 0.1 }) / ((Math.PI * 0.06 ** 2) / 4)).toBeCloseTo(1 - Math.cos(angle) / Math.cos(0.1), 6)
  }))
})

import { expect, test } from 'vitest'
import { veAtSpeed } from '@trochoid/compute/engine/veAtSpeed.ts'

const curve = { x: [100, 300, 600, 900], y: [0.7, 0.85, 0.98, 0.84] }

test('it meets the points, stays between them and is level beyond the ends', () => {
  curve.x.forEach((speed, i) => expect(veAtSpeed({ curve, speed })).toBeCloseTo(curve.y[i]!, 12))
  expect(veAtSpeed({ curve, speed: 50 })).toBe(0.7)
  expect(veAtSpeed({ curve, speed: 2000 })).toBe(0.84)
  for (let speed = 300; speed <= 600; speed += 10) {
    expect(veAtSpeed({ curve, speed })).toBeGreaterThanOrEqual(0.85)
    expect(veAtSpeed({ curve, speed })).toBeLessThanOrEqual(0.98)
  }
})

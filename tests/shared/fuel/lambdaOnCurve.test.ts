import { expect, test } from 'vitest'
import { lambdaOnCurve } from '@trochoid/compute/fuel/lambdaOnCurve.ts'

const curve = { x: [3e4, 8e4, 1e5, 1.3e5, 2.5e5], y: [0.97, 0.95, 0.9, 0.84, 0.77] }

test('it meets its points, is level beyond them and never rises between them', () => {
  curve.x.forEach((x, i) => expect(lambdaOnCurve({ curve, manifold: x })).toBeCloseTo(curve.y[i]!, 12))
  expect(lambdaOnCurve({ curve, manifold: 1e4 })).toBe(0.97)
  expect(lambdaOnCurve({ curve, manifold: 4e5 })).toBe(0.77)
  for (let p = 3e4; p < 2.5e5; p += 1e3) expect(lambdaOnCurve({ curve, manifold: p + 1e3 })).toBeLessThanOrEqual(lambdaOnCurve({ curve, manifold: p }) + 1e-12)
})

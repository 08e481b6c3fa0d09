import { expect, test } from 'vitest'
import { backPressureRatio } from '@trochoid/compute/boost/backPressureRatio.ts'

test('is 1 where the engine breathes out against what it breathes in from', () => {
  expect(backPressureRatio({ turbineInlet: 2e5, manifold: 2e5 })).toBe(1)
  expect(backPressureRatio({ turbineInlet: 3e5, manifold: 2e5 })).toBe(1.5)
})

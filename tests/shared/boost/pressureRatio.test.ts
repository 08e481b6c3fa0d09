import { expect, test } from 'vitest'
import { pressureRatio } from '@trochoid/compute/boost/pressureRatio.ts'

test('is 1 between equal pressures, and a throttled inlet raises it', () => {
  expect(pressureRatio({ outlet: 1e5, inlet: 1e5 })).toBe(1)
  expect(pressureRatio({ outlet: 2e5, inlet: 0.95e5 })).toBeGreaterThan(pressureRatio({ outlet: 2e5, inlet: 1e5 }))
})

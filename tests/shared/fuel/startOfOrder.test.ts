import { expect, test } from 'vitest'
import { startOfOrder } from '@trochoid/compute/fuel/startOfOrder.ts'

test('rising load waits for the start, falling load for the lower pressure', () => {
  expect(startOfOrder({ moving: 'rising', start: 9e4, off: 8.2e4 })).toBe(9e4)
  expect(startOfOrder({ moving: 'falling', start: 9e4, off: 8.2e4 })).toBe(8.2e4)
})

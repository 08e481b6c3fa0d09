import { expect, test } from 'vitest'
import { speedMargin } from '@trochoid/compute/boost/speedMargin.ts'

test('is 1 at the limit', () => {
  expect(speedMargin({ speed: 13000, limit: 13000 })).toBe(1)
  expect(speedMargin({ speed: 6500, limit: 13000 })).toBe(0.5)
})

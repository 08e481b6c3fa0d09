import { expect, test } from 'vitest'
import { combinedUncertainty } from '@trochoid/compute/uncertainty/combinedUncertainty.ts'
import { rootSum } from '@trochoid/compute/uncertainty/rootSum.ts'

test('parts put together are never less than the largest, nor more than their sum', () => {
  expect(rootSum([3, 4])).toBe(5)
  expect(rootSum([])).toBe(0)
  expect(combinedUncertainty({ a: 1, b: 2, c: 3, d: 4 })).toBeGreaterThan(4)
  expect(combinedUncertainty({ a: 1, b: 2, c: 3, d: 4 })).toBeLessThan(10)
})

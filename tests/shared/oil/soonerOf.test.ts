import { expect, test } from 'vitest'
import { soonerOf } from '@trochoid/compute/oil/soonerOf.ts'

test('the smaller holds, and one that never comes does not count', () => {
  expect(soonerOf({ one: 2, other: 3 })).toBe(2)
  expect(soonerOf({ one: NaN, other: 3 })).toBe(3)
  expect(soonerOf({ one: 2, other: NaN })).toBe(2)
  expect(soonerOf({ one: NaN, other: NaN })).toBeNaN()
})

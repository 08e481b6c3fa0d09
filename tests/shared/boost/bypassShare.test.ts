import { expect, test } from 'vitest'
import { bypassShare } from '@trochoid/compute/boost/bypassShare.ts'

test('is a share of the exhaust', () => {
  expect(bypassShare({ wastegateFlow: 0, exhaustFlow: 0.36 })).toBe(0)
  expect(bypassShare({ wastegateFlow: 0.09, exhaustFlow: 0.36 })).toBeCloseTo(0.25, 15)
})

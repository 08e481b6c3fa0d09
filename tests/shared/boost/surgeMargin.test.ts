import { expect, test } from 'vitest'
import { surgeMargin } from '@trochoid/compute/boost/surgeMargin.ts'

test('is nothing on the surge line and grows to the right', () => {
  expect(surgeMargin({ flow: 0.15, surgeFlow: 0.15 })).toBe(0)
  expect(surgeMargin({ flow: 0.3, surgeFlow: 0.15 })).toBeCloseTo(1, 15)
  expect(surgeMargin({ flow: 0.1, surgeFlow: 0.15 })).toBeLessThan(0)
})

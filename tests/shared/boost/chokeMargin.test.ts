import { expect, test } from 'vitest'
import { chokeMargin } from '@trochoid/compute/boost/chokeMargin.ts'

test('is nothing on the right edge and grows to the left', () => {
  expect(chokeMargin({ flow: 0.5, chokeFlow: 0.5 })).toBe(0)
  expect(chokeMargin({ flow: 0.25, chokeFlow: 0.5 })).toBeCloseTo(1, 15)
  expect(chokeMargin({ flow: 0.6, chokeFlow: 0.5 })).toBeLessThan(0)
})

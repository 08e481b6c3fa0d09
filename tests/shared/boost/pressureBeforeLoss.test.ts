import { expect, test } from 'vitest'
import { pressureBeforeLoss } from '@trochoid/compute/boost/pressureBeforeLoss.ts'

test('no loss, no difference; a loss adds', () => {
  expect(pressureBeforeLoss({ after: 2e5, loss: 0 })).toBe(2e5)
  expect(pressureBeforeLoss({ after: 2e5, loss: 8e3 })).toBe(208e3)
})

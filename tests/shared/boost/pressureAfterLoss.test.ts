import { expect, test } from 'vitest'
import { pressureAfterLoss } from '@trochoid/compute/boost/pressureAfterLoss.ts'
import { pressureBeforeLoss } from '@trochoid/compute/boost/pressureBeforeLoss.ts'

test('takes what the other way adds', () => {
  expect(pressureAfterLoss({ before: 101325, loss: 3000 })).toBe(98325)
  expect(pressureBeforeLoss({ after: pressureAfterLoss({ before: 101325, loss: 3000 }), loss: 3000 })).toBe(101325)
})

import { expect, test } from 'vitest'
import { oilShareBurned } from '@trochoid/compute/fuel/oilShareBurned.ts'

test('premix counts where it is used', () => {
  expect(oilShareBurned({ by: 'metered', share: 0.02 })).toBe(0)
  expect(oilShareBurned({ by: 'premixed', share: 0.02 })).toBe(0.02)
  expect(oilShareBurned({ by: 'both', share: 0.02 })).toBe(0.02)
})

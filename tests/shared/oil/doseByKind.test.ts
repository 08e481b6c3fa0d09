import { expect, test } from 'vitest'
import { doseByKind } from '@trochoid/compute/oil/doseByKind.ts'

test('one way, the other way, or the sum', () => {
  const doses = { metered: 2e-6, premixed: 3e-6 }
  expect(doseByKind({ ...doses, by: 'metered' })).toBe(2e-6)
  expect(doseByKind({ ...doses, by: 'premixed' })).toBe(3e-6)
  expect(doseByKind({ ...doses, by: 'both' })).toBeCloseTo(5e-6, 15)
})

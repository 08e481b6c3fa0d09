import { expect, test } from 'vitest'
import { turbinePowerAsked } from '@trochoid/compute/boost/turbinePowerAsked.ts'

test('bearings cost something', () => {
  expect(turbinePowerAsked({ compressor: 25e3, mechanicalEfficiency: 1 })).toBe(25e3)
  expect(turbinePowerAsked({ compressor: 25e3, mechanicalEfficiency: 0.95 })).toBeGreaterThan(25e3)
})

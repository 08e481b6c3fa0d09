import fc from 'fast-check'
import { expect, test } from 'vitest'
import { meanDifference } from '@trochoid/compute/cooling/meanDifference.ts'

const end = fc.double({ min: 0.5, max: 300, noNaN: true })
test('symmetric, between the ends, between their geometric and arithmetic means', () => {
  fc.assert(fc.property(end, end, (first, second) => {
    const mean = meanDifference({ first, second })
    expect(mean / meanDifference({ first: second, second: first })).toBeCloseTo(1, 9)
    expect(mean).toBeGreaterThanOrEqual(Math.sqrt(first * second) * (1 - 1e-9))
    expect(mean).toBeLessThanOrEqual(((first + second) / 2) * (1 + 1e-9))
  }))
})
test('no jump where the ends become equal', () => {
  expect(meanDifference({ first: 40, second: 40 })).toBe(40)
  for (const part of [0.99e-4, 1.01e-4, -0.99e-4, -1.01e-4]) expect(meanDifference({ first: 40 * (1 + part), second: 40 })).toBeCloseTo(40 * (1 + part / 2 - part ** 2 / 12), 9)
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { blendStoichiometry } from '@trochoid/compute/fuel/blendStoichiometry.ts'
import { stoichiometricRatioOf } from '@trochoid/compute/fuel/stoichiometricRatioOf.ts'

const petrol = { petrolDensity: 745, petrolHydrogen: 1.85 }

test('without ethanol it is the petrol’s own ratio', () => {
  expect(blendStoichiometry({ ethanolShare: 0, ...petrol })).toBeCloseTo(stoichiometricRatioOf({ hydrogen: 1.85, oxygen: 0 }), 12)
})
test('pure ethanol is C2H6O, whatever the petrol', () => {
  const pure = stoichiometricRatioOf({ hydrogen: 3, oxygen: 0.5 })
  expect(blendStoichiometry({ ethanolShare: 1, ...petrol })).toBeCloseTo(pure, 12)
  expect(blendStoichiometry({ ethanolShare: 1, petrolDensity: 700, petrolHydrogen: 2.1 })).toBeCloseTo(pure, 12)
})
test('an 85 % blend lies where tables put it, near 9.8', () => expect(blendStoichiometry({ ethanolShare: 0.85, ...petrol })).toBeCloseTo(9.77, 1))
test('more ethanol asks less air, and never leaves the two ends', () => {
  fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (a, b) => {
    const [low, high] = a < b ? [a, b] : [b, a]
    expect(blendStoichiometry({ ethanolShare: high, ...petrol })).toBeLessThanOrEqual(blendStoichiometry({ ethanolShare: low, ...petrol }) + 1e-12)
  }))
})
test('a lighter petrol leaves the ethanol a larger share by mass', () => {
  expect(blendStoichiometry({ ethanolShare: 0.5, petrolDensity: 720, petrolHydrogen: 1.85 })).toBeLessThan(blendStoichiometry({ ethanolShare: 0.5, petrolDensity: 770, petrolHydrogen: 1.85 }))
})

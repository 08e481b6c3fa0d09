import { describe, expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { filmOfBearing } from '@trochoid/compute/oil/filmOfBearing.ts'

const bearing = { load: 4000, diameter: 0.043, length: 0.02, diametral: 60e-6, filmSpeed: 400, slidingSpeed: 400, supply: 363.15, viscosity40: 100e-6, viscosity100: 14e-6, density15: 860, share: 0.8 }

describe('a bearing without a film', () => {
  // A load that turns at half the sum of the two speeds drags no oil into the gap (Cameron, The Principles of Lubrication (1966), from memory).
  test('nothing sweeps oil under the load: no answer, and it says why', () => {
    for (const filmSpeed of [0, -10, NaN]) {
      expect(() => filmOfBearing({ ...bearing, filmSpeed })).toThrow(NoAnswer)
      expect(() => filmOfBearing({ ...bearing, filmSpeed })).toThrow('Nothing sweeps oil')
    }
  })
  test('oil that thickens with heat is refused', () => {
    expect(() => filmOfBearing({ ...bearing, viscosity100: 100e-6 })).toThrow('thicker at 100')
    expect(() => filmOfBearing({ ...bearing, viscosity100: 120e-6 })).toThrow(NoAnswer)
  })
})
test('more load leaves less film, and power is torque times sliding speed', () => {
  const a = filmOfBearing(bearing), b = filmOfBearing({ ...bearing, load: 8000 })
  expect(b.thinnest).toBeLessThan(a.thinnest)
  expect(a.thinnest).toBeLessThan(a.clearance)
  expect(a.power).toBeCloseTo(a.torque * 400, 9)
  expect(a.pressure).toBeCloseTo(4000 / (0.043 * 0.02), 6)
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { waterBoilingPressure } from '@trochoid/compute/cooling/waterBoilingPressure.ts'
import { waterBoilingTemperature } from '@trochoid/compute/cooling/waterBoilingTemperature.ts'

test('is the inverse of the pressure equation', () => {
  fc.assert(fc.property(fc.double({ min: 273.15, max: 647, noNaN: true }), (temperature) => {
    expect(waterBoilingTemperature({ pressure: waterBoilingPressure({ temperature }) })).toBeCloseTo(temperature, 7)
  }))
})
test('water boils cooler on a mountain: about a degree for 300 m', () => {
  // ISO 2533: 89,875 Pa at 1,000 m.
  const cooler = waterBoilingTemperature({ pressure: 101325 }) - waterBoilingTemperature({ pressure: 89875 })
  expect(cooler).toBeGreaterThan(3)
  expect(cooler).toBeLessThan(3.7)
})

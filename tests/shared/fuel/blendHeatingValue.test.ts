import { expect, test } from 'vitest'
import { blendHeatingValue } from '@trochoid/compute/fuel/blendHeatingValue.ts'
import { ethanolDensityAt } from '@trochoid/compute/fuel/ethanolDensityAt.ts'

test('its ends are petrol as entered and ethanol as tabled', () => {
  expect(blendHeatingValue({ ethanolShare: 0, petrolDensity: 745, petrolHeat: 43.4e6 })).toBe(43.4e6)
  expect(blendHeatingValue({ ethanolShare: 1, petrolDensity: 745, petrolHeat: 43.4e6 })).toBeCloseTo(26.95e6, 3)
})
test('heat per volume is what the two parts bring by volume at 15 °C', () => {
  const ethanol = ethanolDensityAt({ temperature: 288.15 })
  for (const share of [0.05, 0.3, 0.85]) {
    const perVolume = share * ethanol * 26.95e6 + (1 - share) * 745 * 43.4e6
    const mass = share * ethanol + (1 - share) * 745
    expect(blendHeatingValue({ ethanolShare: share, petrolDensity: 745, petrolHeat: 43.4e6 })).toBeCloseTo(perVolume / mass, 3)
  }
})

import { expect, test } from 'vitest'
import { blendDensity } from '@trochoid/compute/fuel/blendDensity.ts'
import { ethanolDensityAt } from '@trochoid/compute/fuel/ethanolDensityAt.ts'
import { petrolDensityAt } from '@trochoid/compute/fuel/petrolDensityAt.ts'

test('petrol at 15 °C has the density it was stated with', () => {
  for (const density15 of [660, 720, 745, 770]) expect(petrolDensityAt({ density15, temperature: 288.15 })).toBeCloseTo(density15, 12)
})
test('petrol loses about a thousandth per kelvin, light petrol more than heavy', () => {
  const lost = (density15: number): number => 1 - petrolDensityAt({ density15, temperature: 298.15 }) / density15
  expect(lost(745)).toBeGreaterThan(0.01)
  expect(lost(745)).toBeLessThan(0.0135)
  expect(lost(700)).toBeGreaterThan(lost(760))
})
test('ends of the blend are the pure fuels, the middle is the mean', () => {
  const at = { petrolDensity: 745, temperature: 313.15 }
  const petrol = petrolDensityAt({ density15: 745, temperature: 313.15 })
  const ethanol = ethanolDensityAt({ temperature: 313.15 })
  expect(blendDensity({ ethanolShare: 0, ...at })).toBe(petrol)
  expect(blendDensity({ ethanolShare: 1, ...at })).toBe(ethanol)
  expect(blendDensity({ ethanolShare: 0.5, ...at })).toBeCloseTo((petrol + ethanol) / 2, 10)
})
test('warm fuel is lighter', () => {
  const at = (temperature: number): number => blendDensity({ ethanolShare: 0.1, petrolDensity: 745, temperature })
  for (let t = 255; t < 360; t += 5) expect(at(t + 5)).toBeLessThan(at(t))
})

import { expect, test } from 'vitest'
import { blendHeatingValue } from '@trochoid/compute/fuel/blendHeatingValue.ts'
import { burnedHeat } from '@trochoid/compute/fuel/burnedHeat.ts'

const fuel = { ethanolShare: 0.05, petrolDensity: 745, petrolHeat: 43.4e6 }

test('without oil it is that of the blend, and so it is with oil of the same heating value', () => {
  const alone = blendHeatingValue(fuel)
  expect(burnedHeat({ ...fuel, oilShare: 0, oilDensity: 870, oilHeat: 42e6 })).toBe(alone)
  expect(burnedHeat({ ...fuel, oilShare: 0.04, oilDensity: 870, oilHeat: alone })).toBeCloseTo(alone, 3)
})

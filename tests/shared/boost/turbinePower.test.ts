import { expect, test } from 'vitest'
import { turbinePower } from '@trochoid/compute/boost/turbinePower.ts'
import { turbineOutletTemperature } from '@trochoid/compute/boost/turbineOutletTemperature.ts'

const at = (expansionRatio: number, efficiency = 0.6): number => turbinePower({ flow: 0.25, temperature: 1200, expansionRatio, efficiency, specificHeat: 1300, heatRatio: 1.3 })
test('no expansion, no power; more expansion, more power, but never all the heat', () => {
  expect(at(1)).toBe(0)
  for (let r = 1; r < 8; r *= 1.2) expect(at(r * 1.2)).toBeGreaterThan(at(r))
  expect(at(1e9, 1)).toBeLessThan(0.25 * 1300 * 1200)
})
test('is the heat that the gas loses', () => {
  const after = turbineOutletTemperature({ temperature: 1200, expansionRatio: 1.9, efficiency: 0.6, heatRatio: 1.3 })
  expect(at(1.9)).toBeCloseTo(0.25 * 1300 * (1200 - after), 7)
})

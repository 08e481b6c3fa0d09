import { expect, test } from 'vitest'
import { turbineFlow } from '@trochoid/compute/boost/turbineFlow.ts'

const at = (inletPressure: number, inletTemperature = 1200): number => turbineFlow({ inletPressure, inletTemperature, outletPressure: 1.1e5, flowCapacity: 0.21 })
test('nothing flows without a pressure to drive it', () => {
  expect(at(1.1e5)).toBe(0)
  expect(at(0.9e5)).toBe(0)
})
test('rises with pressure, falls with temperature', () => {
  for (let p = 1.11e5; p < 6e5; p *= 1.1) expect(at(p * 1.1)).toBeGreaterThan(at(p))
  expect(at(2e5, 4 * 300)).toBeCloseTo(at(2e5, 300) / 2, 12)
})
test('nears its capacity, counted at the standard, for a large expansion ratio', () => {
  const inletPressure = 101325 * 100
  expect(turbineFlow({ inletPressure, inletTemperature: 288.15, outletPressure: 101325, flowCapacity: 0.21 }) / 100).toBeCloseTo(0.21, 4)
})
test('chokes later than a single nozzle: at a ratio of 2 it passes 87 % of the limit', () => {
  expect(turbineFlow({ inletPressure: 202650, inletTemperature: 288.15, outletPressure: 101325, flowCapacity: 0.2 }) / 0.4).toBeCloseTo(Math.sqrt(3) / 2, 12)
})

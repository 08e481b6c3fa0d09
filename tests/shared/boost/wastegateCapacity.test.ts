import { expect, test } from 'vitest'
import { wastegateCapacity } from '@trochoid/compute/boost/wastegateCapacity.ts'
import { chokedFlow } from '@trochoid/compute/boost/chokedFlow.ts'
import { subsonicFlow } from '@trochoid/compute/boost/subsonicFlow.ts'

const gas = { dischargeCoefficient: 0.7, inletTemperature: 1200, heatRatio: 1.32, gasConstant: 296 }
const x = (inletPressure: number, outletPressure: number) => ({ ...gas, area: 1e-3, inletPressure, outletPressure })
test('takes the choked branch at a low pressure behind and the subsonic one at a high one', () => {
  expect(wastegateCapacity(x(3e5, 1.2e5))).toBe(chokedFlow(x(3e5, 1.2e5)))
  expect(wastegateCapacity(x(2e5, 1.5e5))).toBe(subsonicFlow(x(2e5, 1.5e5)))
  expect(wastegateCapacity(x(3e5, 1.2e5))).toBe(wastegateCapacity(x(3e5, 0.5e5)))
})
test('passes nothing without a pressure to drive it', () => {
  expect(wastegateCapacity(x(1.5e5, 1.5e5))).toBe(0)
  expect(wastegateCapacity(x(1.2e5, 1.5e5))).toBe(0)
})
test('never falls as the pressure before rises, and has no step where it chokes', () => {
  let before = 0
  for (let p = 1.21e5; p < 4e5; p += 500) {
    const flow = wastegateCapacity(x(p, 1.2e5))
    expect(flow).toBeGreaterThan(before)
    if (before > 0.05) expect(flow - before).toBeLessThan(0.002)
    before = flow
  }
})

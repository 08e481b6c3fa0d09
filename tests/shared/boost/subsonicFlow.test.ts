import { expect, test } from 'vitest'
import { subsonicFlow } from '@trochoid/compute/boost/subsonicFlow.ts'
import { chokedFlow } from '@trochoid/compute/boost/chokedFlow.ts'
import { criticalPressureRatio } from '@trochoid/compute/boost/criticalPressureRatio.ts'

const gas = { dischargeCoefficient: 0.7, inletTemperature: 1200, heatRatio: 1.32, gasConstant: 296 }
const at = (outletPressure: number): number => subsonicFlow({ ...gas, area: 1e-3, inletPressure: 2e5, outletPressure })
test('nothing flows between equal pressures', () => expect(at(2e5)).toBe(0))
test('meets the choked flow at the critical ratio, where it is greatest', () => {
  const critical = 2e5 * criticalPressureRatio({ heatRatio: 1.32 })
  expect(at(critical)).toBeCloseTo(chokedFlow({ ...gas, area: 1e-3, inletPressure: 2e5 }), 12)
  expect(at(critical * 1.05)).toBeLessThan(at(critical))
  expect(at(critical * 0.95)).toBeLessThan(at(critical))
})
test('for a small difference it is the flow of a liquid of that density', () => {
  const density = 2e5 / (296 * 1200)
  expect(at(2e5 - 50) / (0.7e-3 * Math.sqrt(2 * density * 50))).toBeCloseTo(1, 3)
})

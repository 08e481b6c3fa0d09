import { expect, test } from 'vitest'
import { chokedFlow } from '@trochoid/compute/boost/chokedFlow.ts'

const gas = { dischargeCoefficient: 0.7, inletTemperature: 1200, heatRatio: 1.32, gasConstant: 296 }
test('goes with area and with pressure, and with the root of temperature against it', () => {
  const at = (area: number, inletPressure: number, inletTemperature = 1200): number => chokedFlow({ ...gas, area, inletPressure, inletTemperature })
  expect(at(2e-3, 2e5)).toBeCloseTo(2 * at(1e-3, 2e5), 14)
  expect(at(1e-3, 4e5)).toBeCloseTo(2 * at(1e-3, 2e5), 14)
  expect(at(1e-3, 2e5, 4800)).toBeCloseTo(at(1e-3, 2e5) / 2, 14)
})

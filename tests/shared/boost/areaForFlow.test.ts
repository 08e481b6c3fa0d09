import { expect, test } from 'vitest'
import { areaForFlow } from '@trochoid/compute/boost/areaForFlow.ts'
import { wastegateCapacity } from '@trochoid/compute/boost/wastegateCapacity.ts'

test('the area it asks passes the flow', () => {
  const gas = { dischargeCoefficient: 0.7, inletPressure: 2.6e5, inletTemperature: 1200, outletPressure: 1.3e5, heatRatio: 1.3, gasConstant: 296 }
  const area = areaForFlow({ area: 1e-3, capacity: wastegateCapacity({ ...gas, area: 1e-3 }), flow: 0.1 })
  expect(wastegateCapacity({ ...gas, area })).toBeCloseTo(0.1, 13)
})

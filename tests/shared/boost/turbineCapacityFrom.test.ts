import { expect, test } from 'vitest'
import { turbineCapacityFrom } from '@trochoid/compute/boost/turbineCapacityFrom.ts'
import { turbineFlow } from '@trochoid/compute/boost/turbineFlow.ts'

test('gives back the capacity behind a flow', () => {
  const point = { inletPressure: 2.3e5, inletTemperature: 1180, outletPressure: 1.2e5 }
  expect(turbineCapacityFrom({ ...point, flow: turbineFlow({ ...point, flowCapacity: 0.23 }) })).toBeCloseTo(0.23, 13)
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { turbineInletPressure } from '@trochoid/compute/boost/turbineInletPressure.ts'
import { turbineFlow } from '@trochoid/compute/boost/turbineFlow.ts'

test('gives back the pressure that drove a flow', () => {
  fc.assert(fc.property(fc.double({ min: 1.2e5, max: 5e5, noNaN: true }), fc.double({ min: 900, max: 1300, noNaN: true }), (inletPressure, inletTemperature) => {
    const flow = turbineFlow({ inletPressure, inletTemperature, outletPressure: 1.1e5, flowCapacity: 0.21 })
    expect(turbineInletPressure({ flow, inletTemperature, outletPressure: 1.1e5, flowCapacity: 0.21 }) / inletPressure).toBeCloseTo(1, 10)
  }))
})
test('no flow needs no more than the pressure behind', () => expect(turbineInletPressure({ flow: 0, inletTemperature: 1200, outletPressure: 1.1e5, flowCapacity: 0.2 })).toBeCloseTo(1.1e5, 9))

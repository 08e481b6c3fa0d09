import fc from 'fast-check'
import { expect, test } from 'vitest'
import { effectivenessFrom } from '@trochoid/compute/boost/effectivenessFrom.ts'
import { cooledTemperature } from '@trochoid/compute/boost/cooledTemperature.ts'

test('gives back the effectiveness that cooled the charge', () => {
  fc.assert(fc.property(fc.double({ min: 0.1, max: 0.99, noNaN: true }), fc.double({ min: 320, max: 480, noNaN: true }), (effectiveness, inlet) => {
    const outlet = cooledTemperature({ inlet, effectiveness, coolant: 300 })
    expect(effectivenessFrom({ inlet, outlet, coolant: 300 })).toBeCloseTo(effectiveness, 10)
  }))
})

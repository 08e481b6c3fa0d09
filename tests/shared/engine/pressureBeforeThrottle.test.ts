import fc from 'fast-check'
import { expect, test } from 'vitest'
import { areaInSeries } from '@trochoid/compute/engine/areaInSeries.ts'
import { chokedUpstream } from '@trochoid/compute/engine/chokedUpstream.ts'
import { lossAcross } from '@trochoid/compute/engine/lossAcross.ts'
import { pressureBeforeThrottle } from '@trochoid/compute/engine/pressureBeforeThrottle.ts'
import { subsonicUpstream } from '@trochoid/compute/engine/subsonicUpstream.ts'
import { wastegateCapacity } from '@trochoid/compute/boost/wastegateCapacity.ts'

test('the pressure before a throttle pushes just that flow through it', () => {
  fc.assert(fc.property(fc.double({ min: 0.005, max: 0.4, noNaN: true }), fc.double({ min: 1e-4, max: 40e-4, noNaN: true }), fc.double({ min: 25e3, max: 250e3, noNaN: true }), (flow, area, manifold) => {
    const before = pressureBeforeThrottle({ flow, area, dischargeCoefficient: 0.85, temperature: 320, manifold })
    const through = wastegateCapacity({ area, dischargeCoefficient: 0.85, inletPressure: before, inletTemperature: 320, outletPressure: manifold, heatRatio: 1.4, gasConstant: 287.05287 })
    expect(through / flow).toBeCloseTo(1, 6)
    expect(lossAcross({ before, after: manifold })).toBeGreaterThan(0)
  }))
})
test('both branches meet where air reaches the speed of sound', () => {
  const x = { flow: 0.05, area: 3e-4, dischargeCoefficient: 0.8, temperature: 300 }
  const choked = chokedUpstream(x)
  const critical = (2 / 2.4) ** 3.5
  expect(subsonicUpstream({ ...x, after: choked * critical }) / choked).toBeCloseTo(1, 9)
})
test('the open loss and the rest together make the loss of the throttle as it stands', () => {
  // Losses small beside the pressure go with one over area squared.
  const of = (area: number) => subsonicUpstream({ flow: 0.1, area, dischargeCoefficient: 1, temperature: 300, after: 200e3 }) - 200e3
  const [area, open] = [25e-4, 45e-4]
  expect((of(open) + of(areaInSeries({ area, open }))) / of(area)).toBeCloseTo(1, 2)
  expect(areaInSeries({ area: open * 0.9999999, open })).toBeGreaterThan(1)
})

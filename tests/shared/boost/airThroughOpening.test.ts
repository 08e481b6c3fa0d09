import { expect, test } from 'vitest'
import { airThroughOpening } from '@trochoid/compute/boost/airThroughOpening.ts'
import { subsonicUpstream } from '@trochoid/compute/engine/subsonicUpstream.ts'

const opening = { area: 4e-4, dischargeCoefficient: 0.6, inletTemperature: 390 }

test('the pressure that pushes a flow through an opening pushes that flow', () => {
  const before = subsonicUpstream({ flow: 0.05, area: 4e-4, dischargeCoefficient: 0.6, temperature: 390, after: 150e3 })
  expect(airThroughOpening({ ...opening, inletPressure: before, outletPressure: 150e3 })).toBeCloseTo(0.05, 9)
})
test('beyond the speed of sound only the pressure before counts; without a difference nothing flows', () => {
  const of = (outletPressure: number) => airThroughOpening({ ...opening, inletPressure: 200e3, outletPressure })
  expect(of(60e3)).toBe(of(90e3))
  expect(of(150e3)).toBeLessThan(of(90e3))
  expect(of(200e3)).toBe(0)
})

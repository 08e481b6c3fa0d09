import fc from 'fast-check'
import { expect, test } from 'vitest'
import { turbineBalancePressure } from '@trochoid/compute/boost/turbineBalancePressure.ts'
import { turbineFlow } from '@trochoid/compute/boost/turbineFlow.ts'
import { turbinePower } from '@trochoid/compute/boost/turbinePower.ts'

const gas = { outletPressure: 1.25e5, inletTemperature: 1200, flowCapacity: 0.21, efficiency: 0.55, specificHeat: 1330, heatRatio: 1.287 }
test('at the pressure it finds, turbine flow and power are as wanted', () => {
  fc.assert(fc.property(fc.double({ min: 50, max: 90e3, noNaN: true }), fc.double({ min: 0.4, max: 0.8, noNaN: true }), (power, efficiency) => {
    const inletPressure = turbineBalancePressure({ ...gas, efficiency, power })
    const flow = turbineFlow({ ...gas, inletPressure })
    expect(turbinePower({ ...gas, flow, temperature: 1200, efficiency, expansionRatio: inletPressure / 1.25e5 }) / power).toBeCloseTo(1, 4)
  }))
})
test('more power takes more pressure, a better turbine less', () => {
  const at = (power: number, efficiency = 0.55): number => turbineBalancePressure({ ...gas, power, efficiency })
  for (let p = 1e3; p < 1e5; p *= 1.5) expect(at(p * 1.5)).toBeGreaterThan(at(p))
  expect(at(3e4, 0.65)).toBeLessThan(at(3e4, 0.55))
})
test('no power asks for no more than the pressure behind, and a large one is found too', () => {
  expect(turbineBalancePressure({ ...gas, power: 0 })).toBeCloseTo(1.25e5, 3)
  expect(turbineBalancePressure({ ...gas, power: 2e6 })).toBeGreaterThan(2e6)
})

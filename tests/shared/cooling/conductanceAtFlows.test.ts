import fc from 'fast-check'
import { expect, test } from 'vitest'
import { conductanceAtFlows } from '@trochoid/compute/cooling/conductanceAtFlows.ts'
import { thermostatShare } from '@trochoid/compute/cooling/thermostatShare.ts'

const here = { rated: 2600, airShare: 0.8, air: 2, ratedAir: 2, airExponent: 0.6, coolant: 2e-3, ratedCoolant: 2e-3, coolantExponent: 0.8 }
test('at the rated flows it is the rated conductance', () => {
  fc.assert(fc.property(fc.double({ min: 0.2, max: 0.99, noNaN: true }), (airShare) => {
    expect(conductanceAtFlows({ ...here, airShare })).toBeCloseTo(2600, 8)
  }))
})
test('one side alone follows its own power', () => {
  expect(conductanceAtFlows({ ...here, airShare: 1, air: 4 })).toBeCloseTo(2600 * 2 ** 0.6, 8)
  expect(conductanceAtFlows({ ...here, airShare: 0, coolant: 1e-3 })).toBeCloseTo(2600 * 2 ** -0.8, 8)
})
test('endless flow on one side leaves the other side’s resistance', () => {
  expect(conductanceAtFlows({ ...here, air: 1e12 })).toBeCloseTo(2600 / 0.2, -1)
})
test('a thermostat is shut below, half open halfway, open above', () => {
  const at = (temperature: number) => thermostatShare({ temperature, opens: 355, open: 369 })
  expect([at(300), at(355), at(362), at(369), at(400)]).toEqual([0, 0, 0.5, 1, 1])
})

import { expect, test } from 'vitest'
import { cooledTemperature } from '@trochoid/compute/boost/cooledTemperature.ts'

test('lies between charge and cooling air', () => {
  expect(cooledTemperature({ inlet: 400, effectiveness: 0, coolant: 300 })).toBe(400)
  expect(cooledTemperature({ inlet: 400, effectiveness: 1, coolant: 300 })).toBe(300)
  expect(cooledTemperature({ inlet: 400, effectiveness: 0.7, coolant: 300 })).toBeCloseTo(330, 12)
})

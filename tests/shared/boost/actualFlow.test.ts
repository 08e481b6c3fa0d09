import { expect, test } from 'vitest'
import { actualFlow } from '@trochoid/compute/boost/actualFlow.ts'

test('at the reference it is the corrected flow, at half the pressure half of it', () => {
  const at = (pressure: number): number => actualFlow({ corrected: 0.4, temperature: 298, pressure, referenceTemperature: 298, referencePressure: 1e5 })
  expect(at(1e5)).toBeCloseTo(0.4, 15)
  expect(at(5e4)).toBeCloseTo(0.2, 15)
})

import { expect, test } from 'vitest'
import { lineOfDataSheet } from '@trochoid/compute/oil/lineOfDataSheet.ts'
import { lineTemperature } from '@trochoid/compute/oil/lineTemperature.ts'
import { waltherViscosity } from '@trochoid/compute/oil/waltherViscosity.ts'

test('the line runs through both figures and gives the temperature back', () => {
  const line = lineOfDataSheet({ viscosity40: 95e-6, viscosity100: 14.2e-6 })
  expect(waltherViscosity({ ...line, temperature: 313.15 })).toBeCloseTo(95e-6, 12)
  expect(waltherViscosity({ ...line, temperature: 373.15 })).toBeCloseTo(14.2e-6, 12)
  expect(lineTemperature({ ...line, viscosity: 14.2e-6 })).toBeCloseTo(373.15, 6)
})

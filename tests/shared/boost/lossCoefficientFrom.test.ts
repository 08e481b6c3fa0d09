import { expect, test } from 'vitest'
import { lossCoefficientFrom } from '@trochoid/compute/boost/lossCoefficientFrom.ts'
import { flowPressureLoss } from '@trochoid/compute/boost/flowPressureLoss.ts'

test('gives the loss it was found from', () => {
  const coefficient = lossCoefficientFrom({ loss: 3200, flow: 0.31, density: 1.17 })
  expect(flowPressureLoss({ coefficient, flow: 0.31, density: 1.17 })).toBeCloseTo(3200, 8)
})

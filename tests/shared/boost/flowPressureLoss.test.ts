import { expect, test } from 'vitest'
import { flowPressureLoss } from '@trochoid/compute/boost/flowPressureLoss.ts'

test('twice the flow costs four times as much, twice the density half', () => {
  const at = (flow: number, density: number): number => flowPressureLoss({ coefficient: 3e4, flow, density })
  expect(at(0.6, 1.2)).toBeCloseTo(4 * at(0.3, 1.2), 9)
  expect(at(0.3, 2.4)).toBeCloseTo(at(0.3, 1.2) / 2, 9)
  expect(at(0, 1.2)).toBe(0)
})
test('equals the loss of ζ velocity heads', () => {
  const area = 0.003, zeta = 2.5, flow = 0.3, density = 1.2
  const velocity = flow / (density * area)
  expect(flowPressureLoss({ coefficient: zeta / (2 * area ** 2), flow, density })).toBeCloseTo((zeta * density * velocity ** 2) / 2, 6)
})

import { expect, test } from 'vitest'
import { travelPressure } from '@trochoid/compute/boost/travelPressure.ts'

test('runs from first movement to full travel', () => {
  const at = (flow: number): number => travelPressure({ firstMovement: 9e4, fullTravel: 12e4, flow, capacity: 0.2 })
  expect(at(0)).toBe(9e4)
  expect(at(0.1)).toBeCloseTo(105e3, 9)
  expect(at(0.2)).toBeCloseTo(12e4, 9)
})

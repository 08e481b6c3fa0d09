import { expect, test } from 'vitest'
import { fullOpenPressure } from '@trochoid/compute/boost/fullOpenPressure.ts'
import { crackingPressure } from '@trochoid/compute/boost/crackingPressure.ts'

const spring = { preload: 400, exhaustForce: 90, diaphragmArea: 4e-3 }
test('without travel it is the pressure of first movement; travel adds the spring’s rise', () => {
  expect(fullOpenPressure({ ...spring, rate: 9000, travel: 0 })).toBe(crackingPressure(spring))
  expect(fullOpenPressure({ ...spring, rate: 9000, travel: 0.01 }) - crackingPressure(spring)).toBeCloseTo(90 / 4e-3, 8)
})

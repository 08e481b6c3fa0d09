import { expect, test } from 'vitest'
import { crackingPressure } from '@trochoid/compute/boost/crackingPressure.ts'

test('on the bench it is spring over area; exhaust pressure lowers it', () => {
  expect(crackingPressure({ preload: 400, exhaustForce: 0, diaphragmArea: 4e-3 })).toBeCloseTo(1e5, 9)
  expect(crackingPressure({ preload: 400, exhaustForce: 100, diaphragmArea: 4e-3 })).toBeCloseTo(75e3, 9)
  expect(crackingPressure({ preload: 400, exhaustForce: 500, diaphragmArea: 4e-3 })).toBeLessThan(0)
})

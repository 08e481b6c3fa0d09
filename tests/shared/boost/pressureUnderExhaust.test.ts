import { expect, test } from 'vitest'
import { pressureUnderExhaust } from '@trochoid/compute/boost/pressureUnderExhaust.ts'
import { crackingPressure } from '@trochoid/compute/boost/crackingPressure.ts'

test('a bench pressure with exhaust behind the valve is what the spring model says', () => {
  const bench = crackingPressure({ preload: 400, exhaustForce: 0, diaphragmArea: 4e-3 })
  expect(pressureUnderExhaust({ bench, exhaustForce: 120, diaphragmArea: 4e-3 })).toBeCloseTo(crackingPressure({ preload: 400, exhaustForce: 120, diaphragmArea: 4e-3 }), 8)
})

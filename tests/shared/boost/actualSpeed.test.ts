import { expect, test } from 'vitest'
import { actualSpeed } from '@trochoid/compute/boost/actualSpeed.ts'

test('goes with the root of inlet temperature', () => {
  expect(actualSpeed({ corrected: 9000, temperature: 4 * 298, referenceTemperature: 298 })).toBeCloseTo(18000, 9)
})

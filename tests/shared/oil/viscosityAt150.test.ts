import { expect, test } from 'vitest'
import { filmAtTemperature } from '@trochoid/compute/oil/filmAtTemperature.ts'
import { viscosityAt150 } from '@trochoid/compute/oil/viscosityAt150.ts'

const oil = { viscosity40: 90e-6, viscosity100: 14e-6, density15: 865 }

test('is the low-shear line at 150 °C', () => {
  expect(viscosityAt150(oil)).toBe(filmAtTemperature({ ...oil, share: 1, temperature: 423.15 }))
})
test('a usual multigrade has some 4 to 5 mPa s there, near what its grade asks at high shear', () => {
  expect(viscosityAt150(oil)).toBeGreaterThan(3.9e-3)
  expect(viscosityAt150(oil)).toBeLessThan(5e-3)
})

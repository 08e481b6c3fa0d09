import { expect, test } from 'vitest'
import { dilutedViscosity } from '@trochoid/compute/oil/dilutedViscosity.ts'
import { dilutionAfter } from '@trochoid/compute/oil/dilutionAfter.ts'
import { shearedViscosity } from '@trochoid/compute/oil/shearedViscosity.ts'
import { timeToViscosity } from '@trochoid/compute/oil/timeToViscosity.ts'

const oil = { fresh: 14.2e-6, limit: 12.5e-6, lost: 0.12, settling: 54000, inflow: 8e-6, mass: 4.3, driven: 2.3e-5 }

test('at the time found shear and fuel together leave the limit', () => {
  const time = timeToViscosity(oil)
  const sheared = shearedViscosity({ ...oil, time })
  expect(dilutedViscosity({ share: dilutionAfter({ ...oil, time }), viscosity40: sheared, viscosity100: sheared }).viscosity100).toBeCloseTo(12.5e-6, 9)
})
test('more fuel comes sooner, a sturdier oil later, and one that loses nothing never', () => {
  expect(timeToViscosity({ ...oil, inflow: 1.6e-5 })).toBeLessThan(timeToViscosity(oil))
  expect(timeToViscosity({ ...oil, lost: 0.05 })).toBeGreaterThan(timeToViscosity(oil))
  expect(timeToViscosity({ ...oil, lost: 0, inflow: 0 })).toBeNaN()
})

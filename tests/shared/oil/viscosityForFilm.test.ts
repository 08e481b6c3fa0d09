import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { loadedFilm } from '@trochoid/compute/oil/loadedFilm.ts'
import { viscosityForFilm } from '@trochoid/compute/oil/viscosityForFilm.ts'

const bearing = {
  pressure: 8e6, slenderness: 0.83, diameter: 0.072, clearance: 30e-6, filmSpeed: 500, slidingSpeed: 500, supply: 363.15,
  viscosity40: 90e-6, viscosity100: 14e-6, density15: 865, share: 0.9,
}
const film = loadedFilm(bearing).film * bearing.clearance

test('the film there is wants no other oil', () => expect(viscosityForFilm({ ...bearing, wanted: film })).toBeCloseTo(1, 3))
test('the thicker oil found gives the film wanted', () => {
  const times = viscosityForFilm({ ...bearing, wanted: 1.3 * film })
  expect(times).toBeGreaterThan(1.3)
  expect((loadedFilm({ ...bearing, share: 0.9 * times }).film * 30e-6) / film).toBeCloseTo(1.3, 3)
})
test('more clearance wants a thicker oil for the same film', () => {
  const at = (clearance: number) => viscosityForFilm({ ...bearing, clearance, wanted: film })
  expect(at(40e-6)).toBeGreaterThan(1.05)
  expect(at(50e-6)).toBeGreaterThan(at(40e-6))
})
test('no oil makes a film as thick as the clearance', () => {
  expect(() => viscosityForFilm({ ...bearing, wanted: 30e-6 })).toThrow(NoAnswer)
  expect(() => viscosityForFilm({ ...bearing, wanted: 30e-6 })).toThrow(/30.0 µm/)
  expect(() => viscosityForFilm({ ...bearing, wanted: 1e-9 })).toThrow(NoAnswer)
})

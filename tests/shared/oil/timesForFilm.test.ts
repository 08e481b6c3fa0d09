import { expect, test } from 'vitest'
import { timesForFilm } from '@trochoid/compute/oil/timesForFilm.ts'
import { viscosityForFilm } from '@trochoid/compute/oil/viscosityForFilm.ts'

const bearing = {
  pressure: 6e6, slenderness: 0.83, diameter: 0.072, clearance: 30e-6, filmSpeed: 500, slidingSpeed: 500, supply: 373.15, viscosity40: 95e-6, viscosity100: 14.2e-6, density15: 865, share: 0.9,
}

test('where the oil decides it is the factor that just holds the film', () => expect(timesForFilm({ ...bearing, wanted: 6e-6 })).toBe(viscosityForFilm({ ...bearing, wanted: 6e-6 })))
test('where any oil holds the film it is the thinnest that was tried', () => expect(timesForFilm({ ...bearing, wanted: 0.2e-6 })).toBe(0.05))
test('where none does it says so', () => expect(() => timesForFilm({ ...bearing, wanted: 29.9e-6 })).toThrow(/No oil/))

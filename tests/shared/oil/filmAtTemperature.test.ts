import fc from 'fast-check'
import { expect, test } from 'vitest'
import { filmAtTemperature } from '@trochoid/compute/oil/filmAtTemperature.ts'
import { oilDensityAt } from '@trochoid/compute/oil/oilDensityAt.ts'

const oil = { viscosity40: 90e-6, viscosity100: 14e-6, density15: 865 }

test('at the two known temperatures it gives the known viscosities', () => {
  for (const [temperature, nu] of [[313.15, 90e-6], [373.15, 14e-6]] as const) {
    expect(filmAtTemperature({ ...oil, share: 1, temperature }) / (nu * oilDensityAt({ density15: 865, temperature }))).toBeCloseTo(1, 9)
  }
})
test('shear takes its share at every temperature', () => {
  expect(filmAtTemperature({ ...oil, share: 0.8, temperature: 400 })).toBeCloseTo(0.8 * filmAtTemperature({ ...oil, share: 1, temperature: 400 }), 12)
})
test('hotter is thinner', () => {
  fc.assert(fc.property(fc.double({ min: 270, max: 440, noNaN: true }), (temperature) => {
    expect(filmAtTemperature({ ...oil, share: 1, temperature: temperature + 1 })).toBeLessThan(filmAtTemperature({ ...oil, share: 1, temperature }))
  }))
})

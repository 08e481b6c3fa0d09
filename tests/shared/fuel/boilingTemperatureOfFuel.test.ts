import fc from 'fast-check'
import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { boilingTemperatureOfFuel } from '@trochoid/compute/fuel/boilingTemperatureOfFuel.ts'
import { trueVapourPressure } from '@trochoid/compute/fuel/trueVapourPressure.ts'

test('is the vapour pressure backwards', () => {
  fc.assert(fc.property(fc.double({ min: 15e3, max: 110e3, noNaN: true }), fc.double({ min: 260, max: 400, noNaN: true }), (reid, temperature) => {
    expect(boilingTemperatureOfFuel({ reid, pressure: trueVapourPressure({ reid, temperature }) })).toBeCloseTo(temperature, 4)
  }))
})
test('more pressure, hotter; a lighter fuel, cooler', () => {
  const here = boilingTemperatureOfFuel({ reid: 60e3, pressure: 3e5 })
  expect(boilingTemperatureOfFuel({ reid: 60e3, pressure: 4e5 })).toBeGreaterThan(here)
  expect(boilingTemperatureOfFuel({ reid: 90e3, pressure: 3e5 })).toBeLessThan(here)
})
test('without pressure it says that there is no answer', () => {
  expect(() => boilingTemperatureOfFuel({ reid: 60e3, pressure: 0 })).toThrow(NoAnswer)
})

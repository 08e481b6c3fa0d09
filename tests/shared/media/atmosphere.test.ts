import fc from 'fast-check'
import { expect, test } from 'vitest'
import { airCompressibility } from '@trochoid/compute/media/airCompressibility.ts'
import { densityAltitude } from '@trochoid/compute/media/densityAltitude.ts'
import { enhancementFactor } from '@trochoid/compute/media/enhancementFactor.ts'
import { moistAirLaw } from '@trochoid/compute/media/moistAirLaw.ts'
import { pressureAltitude } from '@trochoid/compute/media/pressureAltitude.ts'
import { saturatedShare } from '@trochoid/compute/media/saturatedShare.ts'
import { speedOfSound } from '@trochoid/compute/media/speedOfSound.ts'
import { standardAtmosphere } from '@trochoid/compute/media/standardAtmosphere.ts'

test('altitudes come back from density and from pressure', () => {
  fc.assert(fc.property(fc.double({ min: -1000, max: 11000, noNaN: true }), (altitude) => {
    const { density, pressure } = standardAtmosphere({ altitude })
    expect(densityAltitude({ density })).toBeCloseTo(altitude, 6)
    expect(pressureAltitude({ pressure })).toBeCloseTo(altitude, 6)
  }))
})
test('the air bears its own weight: pressure falls by density times gravity', () => {
  for (const altitude of [0, 1500, 4000]) {
    const fall = (standardAtmosphere({ altitude: altitude - 1 }).pressure - standardAtmosphere({ altitude: altitude + 1 }).pressure) / 2
    expect(fall / (standardAtmosphere({ altitude }).density * 9.80665)).toBeCloseTo(1, 6)
  }
})
test('the speed of sound is that of its temperature', () => {
  const { temperature, speedOfSound: c } = standardAtmosphere({ altitude: 2000 })
  expect(speedOfSound({ temperature })).toBeCloseTo(c, 12)
})
test('damp air is lighter than dry air, warm air than cold', () => {
  const at = (share: number, temperature = 300) => moistAirLaw({ pressure: 1e5, temperature, share, compressibility: 1 })
  expect(at(0.02)).toBeLessThan(at(0))
  expect(at(0) / at(0, 600)).toBeCloseTo(2, 12)
  expect(at(1) / at(0)).toBeCloseTo(0.01801528 / 0.02896546, 9)
})
test('vapour share is the saturated one at full humidity', () => expect(saturatedShare({ humidity: 1, enhancement: 1, saturation: 2340, pressure: 1e5 })).toBeCloseTo(0.0234, 12))
test('air is close to ideal, closer the thinner it is', () => {
  const at = (pressure: number) => airCompressibility({ pressure, temperature: 293.15, share: 0.01 })
  expect(at(1e5)).toBeGreaterThan(0.9994)
  expect(at(1e5)).toBeLessThan(at(6e4))
  expect(at(6e4)).toBeLessThan(1)
})
test('the enhancement factor is least at freezing point and grows with pressure', () => {
  const at = (temperature: number, pressure = 1e5) => enhancementFactor({ temperature, pressure })
  expect(at(273.15)).toBeCloseTo(1.00062 + 0.00314, 9)
  expect(at(293.15)).toBeGreaterThan(at(273.15))
  expect(at(293.15, 1.1e5)).toBeGreaterThan(at(293.15))
})

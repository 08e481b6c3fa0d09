import fc from 'fast-check'
import { expect, test } from 'vitest'
import { traced } from '@trochoid/compute/formula/trace.ts'
import { filmAtTemperature } from '@trochoid/compute/oil/filmAtTemperature.ts'
import { loadedFilm } from '@trochoid/compute/oil/loadedFilm.ts'
import { oilDensityAt } from '@trochoid/compute/oil/oilDensityAt.ts'
import { oilSpecificHeatAt } from '@trochoid/compute/oil/oilSpecificHeatAt.ts'
import { raimondiBoyd } from '@trochoid/compute/oil/raimondiBoyd.ts'

const bearing = {
  pressure: 8e6, slenderness: 0.83, diameter: 0.072, clearance: 30e-6, filmSpeed: 500, slidingSpeed: 500, supply: 363.15,
  viscosity40: 90e-6, viscosity100: 14e-6, density15: 865, share: 0.9,
}

test('viscosity, number and film all belong to the temperature found', () => {
  const found = loadedFilm(bearing)
  const viscosity = filmAtTemperature({ ...bearing, temperature: found.temperature })
  expect(found.viscosity).toBe(viscosity)
  expect(found.sommerfeld).toBeCloseTo(((0.036 / 30e-6) ** 2 * viscosity * 500) / (2 * Math.PI * 8e6), 12)
  expect(found.film).toBe(raimondiBoyd({ sommerfeld: found.sommerfeld, slenderness: 0.83 }).film)
  expect(Math.abs(found.temperature - (363.15 + found.rise / 2))).toBeLessThan(0.05)
})
test('the heat that shear makes leaves with the oil drawn through', () => {
  const { friction, flow, rise, temperature } = loadedFilm(bearing)
  const { side } = raimondiBoyd({ sommerfeld: loadedFilm(bearing).sommerfeld, slenderness: 0.83 })
  const load = 8e6 * 0.072 * 0.83 * 0.072
  const made = friction * 30e-6 * load * 500
  const drawn = (flow * 0.036 * 30e-6 * 500 * 0.83 * 0.072) / (2 * Math.PI)
  const carried = drawn * (1 - side / 2) * oilDensityAt({ density15: 865, temperature }) * oilSpecificHeatAt({ density15: 865, temperature }) * rise
  expect(carried / made).toBeCloseTo(1, 9)
})
test('each change moves the film the way the trade knows', () => {
  const film = (change: Partial<typeof bearing>) => loadedFilm({ ...bearing, ...change }).film * (change.clearance ?? bearing.clearance)
  const now = film({})
  expect(film({ pressure: 9e6 })).toBeLessThan(now)
  expect(film({ supply: 373.15 })).toBeLessThan(now)
  expect(film({ viscosity100: 18e-6, viscosity40: 130e-6 })).toBeGreaterThan(now)
  expect(film({ share: 0.7 })).toBeLessThan(now)
  expect(film({ slidingSpeed: 250 })).toBeGreaterThan(now)
  expect(film({ clearance: 60e-6 })).toBeLessThan(now)
})
test('a film that slides half as fast warms a quarter as much for the same number', () => {
  const cool = loadedFilm({ ...bearing, slidingSpeed: 1e-9 })
  expect(cool.rise).toBeCloseTo(0, 9)
  expect(cool.temperature).toBeCloseTo(363.15, 1)
})
test('finds its temperature from ice-cold oil to hot, in few steps', () => {
  fc.assert(fc.property(fc.double({ min: 250, max: 430, noNaN: true }), fc.double({ min: 1e5, max: 40e6, noNaN: true }), fc.double({ min: 20, max: 1500, noNaN: true }), (supply, pressure, speed) => {
    const { result, trace } = traced(() => loadedFilm({ ...bearing, supply, pressure, filmSpeed: speed, slidingSpeed: speed }))
    expect(result.temperature).toBeGreaterThanOrEqual(supply)
    expect(Math.abs(result.temperature - supply - result.rise / 2)).toBeLessThan(0.5 + 0.02 * result.rise)
    expect(trace.filter((e) => e.id === 'root')).toHaveLength(1)
  }))
})
test('a bearing that does not turn has no film', () => {
  const still = loadedFilm({ ...bearing, filmSpeed: 0 })
  expect(still.film).toBe(0)
  expect(still.sommerfeld).toBe(0)
})

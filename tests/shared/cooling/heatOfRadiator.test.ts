import fc from 'fast-check'
import { expect, test } from 'vitest'
import { heatOfRadiator } from '@trochoid/compute/cooling/heatOfRadiator.ts'
import { sides } from './radiator.ts'

const here = { temperature: 368.15, coolant: 2e-3, glycol: 0.5, air: 2, airTemperature: 308.15, conductance: 2600, ...sides }
test('no flow on either side, no heat', () => {
  expect(heatOfRadiator({ ...here, coolant: 0 })).toBe(0)
  expect(heatOfRadiator({ ...here, air: 0 })).toBe(0)
  expect(heatOfRadiator({ ...here, air: 1e-9 })).toBeGreaterThan(0)
  expect(heatOfRadiator({ ...here, coolant: 1e-9 })).toBeGreaterThan(0)
})
test('at equal temperatures nothing passes, and colder coolant is warmed', () => {
  expect(heatOfRadiator({ ...here, airTemperature: here.temperature })).toBe(0)
  expect(heatOfRadiator({ ...here, airTemperature: 380 })).toBeLessThan(0)
})
test('proportional to the difference of the inlets as far as the coolant’s properties stay', () => {
  expect(heatOfRadiator({ ...here, airTemperature: 338.15 }) / heatOfRadiator(here)).toBeCloseTo(0.5, 12)
})
test('rises with either flow and with conductance, and falls with glycol', () => {
  fc.assert(fc.property(fc.double({ min: 0.3, max: 4, noNaN: true }), fc.double({ min: 3e-4, max: 5e-3, noNaN: true }), (air, coolant) => {
    const x = { ...here, air, coolant }
    const heat = heatOfRadiator(x)
    expect(heatOfRadiator({ ...x, air: air * 1.05 })).toBeGreaterThan(heat)
    expect(heatOfRadiator({ ...x, coolant: coolant * 1.05 })).toBeGreaterThan(heat)
    expect(heatOfRadiator({ ...x, conductance: 2700 })).toBeGreaterThan(heat)
    expect(heatOfRadiator({ ...x, glycol: 0.6 })).toBeLessThan(heat)
  }))
})
test('beyond 125 °C the coolant’s properties are held, so that heat runs straight on', () => {
  const at = (celsius: number) => heatOfRadiator({ ...here, temperature: celsius + 273.15 })
  expect(at(160) - at(150)).toBeCloseTo(at(140) - at(130), 6)
  expect(at(160) - at(150)).toBeCloseTo(at(126) - at(116), -3)
  expect(Math.abs(at(124) - at(114) - (at(140) - at(130)))).toBeGreaterThan(1e-3)
})

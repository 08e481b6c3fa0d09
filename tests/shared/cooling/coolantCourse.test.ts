import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { coolantCourse } from '@trochoid/compute/cooling/coolantCourse.ts'
import { steadyCoolantTemperature } from '@trochoid/compute/cooling/steadyCoolantTemperature.ts'

const radiator = { glycol: 0.5, opens: 355, open: 368, conductance: 1500, airShare: 0.8, air: 1.8, ratedAir: 2, airExponent: 0.6, ratedCoolant: 0.002, coolantExponent: 0.8, airTemperature: 305 }
const here = { ...radiator, pump: 0.003, heat: 60e3, share: 0.5, cycle: 90, time: 3600, start: 350, metalCapacity: 48e3, coolantCapacity: 31e3, toCoolant: 4000, limit: 375, boiling: 400 }

test('at full load throughout it settles at the steady temperature', () => {
  const { heat } = here
  const { end } = coolantCourse({ ...here, share: 1, heat: heat / 2, time: 7200 })
  expect(end).toBeCloseTo(steadyCoolantTemperature({ ...radiator, heat: heat / 2, pump: here.pump }), 2)
})
test('metal stands above coolant by heat over conductance', () => {
  const { end, metal } = coolantCourse({ ...here, share: 1, heat: 30e3, time: 7200 })
  expect(metal - end).toBeCloseTo(30e3 / 4000, 2)
})
test('energy closes, with laps and without, cold and warm', () => {
  for (const share of [0, 0.3, 0.5, 1]) for (const start of [300, 350]) expect(Math.abs(coolantCourse({ ...here, share, start }).open)).toBeLessThan(1e-3)
})
test('without load and above nothing, it cools', () => {
  expect(coolantCourse({ ...here, share: 0, start: 370 }).end).toBeLessThan(370)
})
test('with radiator shut and all heat stored, it warms by heat over capacity', () => {
  const { end, metal } = coolantCourse({ ...here, share: 1, start: 300, time: 30, opens: 390, open: 399 })
  expect((end - 300) * 31e3 + (metal - 300) * 48e3).toBeCloseTo(60e3 * 30, -2)
})
test('a higher share is hotter; the limit is passed between start and end', () => {
  const hot = coolantCourse({ ...here, heat: 75e3, share: 0.95, time: 1200 })
  expect(hot.peak).toBeGreaterThan(coolantCourse({ ...here, time: 1200 }).peak)
  expect(hot.within).toBeGreaterThan(0)
  expect(hot.within).toBeLessThan(1200)
  expect(coolantCourse({ ...here, share: 0.2, time: 1200 }).within).toBe(1200)
})
test('boils: the run ends there', () => {
  const boiled = coolantCourse({ ...here, share: 1, heat: 150e3 })
  expect(boiled.peak).toBe(400)
  expect(boiled.lasted).toBeLessThan(here.time)
  expect(Math.abs(boiled.open)).toBeLessThan(2e-3)
})
test('far from any engine it says so', () => {
  expect(() => coolantCourse({ ...here, cycle: 0.1 })).toThrow(NoAnswer)
})

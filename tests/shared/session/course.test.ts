import { expect, test } from 'vitest'
import reference from '../../reference/session.json' with { type: 'json' }
import { airSpecificHeat } from '@trochoid/compute/formula/constants.ts'
import { boilingHeat } from '@trochoid/compute/cooling/boilingHeat.ts'
import { drive, stand } from '@trochoid/compute/session/course.ts'
import { type Plant } from '@trochoid/compute/session/plant.ts'
import { type Flows, type Store } from '@trochoid/compute/session/rates.ts'

const p = reference.plant
/** The reference's plant: radiator and oil cooler of constant conductance, the coolant's boiling point out of reach. */
const store: Store = {
  outside: p.outside, opens: p.opens, open: p.open, oilOpens: p.oilOpens, coverage: p.coverage, radiators: 1, boiling: 900, railConductance: 0.8,
  cast: (temperature, share, _, air) => share * p.radiator * (temperature - air),
  capacity: { metal: p.metalCapacity, coolant: p.coolantCapacity, oil: p.oilCapacity, core: p.coreCapacity, rail: 1500 },
}
const flowsOf = (metalHeat: number, oilHeat: number, hot: number): Flows => ({
  metalHeat, oilHeat, hot, pump: 1, air: p.airRate / airSpecificHeat.value, running: true, bay: 0, toCoolant: p.toCoolant, charge: p.charge, core: p.core, oil: p.oil, oilRate: 2000,
})
const lap = { name: 'reference', seconds: 70, length: 0, pieces: reference.pieces.map(([seconds], i) => ({ seconds: seconds!, speed: 0, carSpeed: 0, load: i })) }
const plant = {
  store, running: ({ load }: { load: number }) => flowsOf(...(reference.pieces[load]!.slice(1) as [number, number, number])),
  standing: { ...flowsOf(0, 0, p.outside), air: 0, running: false, bay: 15, toCoolant: 380, charge: 0, core: 0, oil: 0 },
  chargeAtFull: (core: number) => core, limits: { coolant: 375, oil: 390, charge: 340 },
} as unknown as Plant
const start = [...reference.start, 313.15, 0]

test('follows the course that two integrators of a reference library agree on, over 25 laps', () => {
  const ran = drive(plant, lap, 25 * 70, start)
  const ends = ran.moments.filter((_, i) => i > 0 && i % reference.pieces.length === 0)
  expect(ends.length).toBe(reference.course.length)
  for (const [i, { t, y }] of reference.course.entries()) {
    const m = ends[i]!
    expect(m.t).toBeCloseTo(t, 6)
    for (const [k, value] of [m.metal, m.coolant, m.oil].entries()) expect(Math.abs(value - y[k]!)).toBeLessThan(0.005)
  }
  expect(Math.abs(ran.state[3]! - reference.course.at(-1)!.y[3]!)).toBeLessThan(0.005)
})
test('its energy closes by a sum that is not the integrator’s', () => {
  const { energy } = drive(plant, lap, 1000, start)
  expect(Math.abs(energy.open)).toBeLessThan(1e-3)
  expect(energy.in).toBeGreaterThan(30e6)
})
test('limits are passed where the course crosses them', () => {
  const ran = drive(plant, lap, 1750, start)
  const crossed = ran.moments.findIndex((m) => m.coolant > 375)
  if (crossed < 0) expect(ran.passed.coolant).toBeUndefined()
  else expect(ran.passed.coolant).toBeGreaterThanOrEqual(ran.moments[crossed - 1]!.t)
})
test('where the coolant boils the run ends, and says when', () => {
  const ran = drive({ ...plant, store: { ...store, boiling: 358 } }, lap, 1750, start)
  expect(ran.boils).toBeGreaterThan(0)
  expect(ran.moments.at(-1)!.t).toBe(ran.boils)
  expect(ran.state[1]!).toBeCloseTo(358, 3)
})
test('standing, metal and coolant come together, and what is lost went to the bay', () => {
  const from = [400, 370, 370, 320, 313, 0]
  const closed = stand({ ...plant, standing: { ...plant.standing, bay: 0 }, store: { ...store, railConductance: 1e-9 } } as Plant, 7200, from)
  const even = (p.metalCapacity * 400 + p.coolantCapacity * 370) / (p.metalCapacity + p.coolantCapacity)
  expect(closed.state[0]).toBeCloseTo(even, 3)
  expect(closed.state[1]).toBeCloseTo(even, 3)
  expect(Math.abs(stand(plant, 3600, from).energy.open)).toBeLessThan(1e-3)
})
test('standing above the boiling point, the coolant stays at it and the rest leaves as vapour', () => {
  const low = { ...plant, standing: { ...plant.standing, bay: 0 }, store: { ...store, boiling: 380, railConductance: 1e-9 } } as Plant
  const { state, boils } = stand(low, 7200, [400, 370, 370, 320, 313, 0])
  expect(boils).toBeGreaterThan(0)
  expect(state[1]!).toBeLessThan(380.02)
  const even = (p.metalCapacity * 400 + p.coolantCapacity * 370) / (p.metalCapacity + p.coolantCapacity)
  expect(state[5]! * boilingHeat({ temperature: 380 })).toBeCloseTo((even - 380) * (p.metalCapacity + p.coolantCapacity), -4)
})
test('heat of boiling lies on the steam tables within 0.05 %', () => {
  for (const { celsius, heat } of reference.boilingHeat) expect(Math.abs(boilingHeat({ temperature: celsius + 273.15 }) / heat - 1)).toBeLessThan(5e-4)
})

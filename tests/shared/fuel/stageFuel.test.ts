import fc from 'fast-check'
import { expect, test } from 'vitest'
import { stageFuel } from '@trochoid/compute/fuel/stageFuel.ts'

const plan = { start: 105e3, gate: 105e3, width: 30e3, fullShare: 0.7, primaryLeast: 6e-6, secondaryLeast: 15e-6 }
const parts = (fuel: number, manifold: number, change: Partial<typeof plan> = {}) => stageFuel({ fuel, manifold, ...plan, ...change })
const mg = (x: number): number => x * 1e-6

test('below hand-over the primaries give all', () => {
  expect(parts(mg(80), 104.9e3)).toMatchObject({ primary: mg(80), secondary: 0 })
  expect(parts(mg(80), 40e3)).toMatchObject({ primary: mg(80), secondary: 0 })
})
test('at hand-over the secondaries step to their least and the primaries down by the same fuel', () => {
  const { primary, secondary } = parts(mg(80), 105e3)
  expect(secondary).toBe(plan.secondaryLeast)
  expect(primary).toBeCloseTo(mg(65), 15)
})
test('after the width they share in proportion to flow', () => {
  const { primary, secondary } = parts(mg(100), 140e3)
  expect(secondary).toBeCloseTo(mg(70), 15)
  expect(primary).toBeCloseTo(mg(30), 15)
})
test('half way through the width they have half of it', () => expect(parts(mg(100), 120e3).secondary).toBeCloseTo(mg(35), 15))
test('where the primaries would fall below their least, the secondaries wait', () => {
  expect(parts(mg(20), 106e3)).toMatchObject({ primary: mg(20), secondary: 0 })
  expect(parts(mg(21.5), 106e3).secondary).toBe(plan.secondaryLeast)
  expect(parts(mg(21), 106e3, { primaryLeast: mg(6), secondaryLeast: mg(15) }).primary).toBeGreaterThanOrEqual(mg(6) * (1 - 1e-12))
})
test('with no secondaries the primaries give all at any load', () => {
  expect(parts(mg(200), 250e3, { fullShare: 0, secondaryLeast: 0 })).toMatchObject({ primary: mg(200), secondary: 0 })
})
const any = { fuel: fc.double({ min: 5e-6, max: 3e-4, noNaN: true }), manifold: fc.double({ min: 3e4, max: 3e5, noNaN: true }), fullShare: fc.double({ min: 0, max: 0.95, noNaN: true }) }
test('the sum is always the fuel asked', () => {
  fc.assert(fc.property(any.fuel, any.manifold, any.fullShare, (fuel, manifold, fullShare) => {
    const { primary, secondary } = parts(fuel, manifold, { fullShare })
    expect(primary + secondary).toBeCloseTo(fuel, 15)
    expect(secondary).toBeGreaterThanOrEqual(0)
  }))
})
test('a secondary gives nothing, or at least what it repeats', () => {
  fc.assert(fc.property(any.fuel, any.manifold, any.fullShare, (fuel, manifold, fullShare) => {
    const { primary, secondary } = parts(fuel, manifold, { fullShare })
    if (secondary !== 0) {
      expect(secondary).toBeGreaterThanOrEqual(plan.secondaryLeast)
      expect(primary).toBeGreaterThanOrEqual(plan.primaryLeast)
    }
  }))
})
test('beyond the first step nothing leaps: a little more load changes each stage a little', () => {
  let before = parts(mg(80), 105e3)
  for (let p = 105e3; p <= 160e3; p += 100) {
    const now = parts(mg(80) * (p / 105e3), p)
    expect(Math.abs(now.secondary - before.secondary)).toBeLessThan(mg(1))
    expect(Math.abs(now.primary - before.primary)).toBeLessThan(mg(1))
    before = now
  }
})
test('as load falls the secondaries hold on at their least down to the gate, and the sum stays', () => {
  const held = parts(mg(80), 99e3, { gate: 97e3 })
  expect(held.secondary).toBe(plan.secondaryLeast)
  expect(held.primary + held.secondary).toBeCloseTo(mg(80), 15)
  expect(parts(mg(80), 96e3, { gate: 97e3 }).secondary).toBe(0)
  expect(parts(mg(100), 140e3, { gate: 97e3 })).toEqual(parts(mg(100), 140e3))
})

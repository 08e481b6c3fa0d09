import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { effectivenessCounter } from '@trochoid/compute/cooling/effectivenessCounter.ts'
import { effectivenessCrossStrongerMixed } from '@trochoid/compute/cooling/effectivenessCrossStrongerMixed.ts'
import { effectivenessCrossUnmixed } from '@trochoid/compute/cooling/effectivenessCrossUnmixed.ts'
import { effectivenessCrossWeakerMixed } from '@trochoid/compute/cooling/effectivenessCrossWeakerMixed.ts'
import { effectivenessParallel } from '@trochoid/compute/cooling/effectivenessParallel.ts'

type Reference = { readonly crossUnmixed: readonly { readonly ntu: number; readonly ratio: number; readonly effectiveness: number }[] }
const reference = JSON.parse(readFileSync(new URL('../../reference/cooling.json', import.meta.url), 'utf8')) as Reference

test('agrees with the Bessel form by quadrature over the whole grid', () => {
  expect(reference.crossUnmixed.length).toBe(28)
  for (const { ntu, ratio, effectiveness } of reference.crossUnmixed) expect(effectivenessCrossUnmixed({ units: ntu, ratio })).toBeCloseTo(effectiveness, 11)
})
const units = fc.double({ min: 0.02, max: 10, noNaN: true })
const ratio = fc.double({ min: 0.01, max: 1, noNaN: true })
test('order of the arrangements: counter best, unmixed cross next, either mixed cross below, parallel last', () => {
  fc.assert(fc.property(units, ratio, (u, r) => {
    const x = { units: u, ratio: r }
    const unmixed = effectivenessCrossUnmixed(x)
    expect(effectivenessCounter(x)).toBeGreaterThanOrEqual(unmixed - 1e-12)
    for (const lower of [effectivenessCrossWeakerMixed(x), effectivenessCrossStrongerMixed(x)]) {
      expect(unmixed).toBeGreaterThanOrEqual(lower - 1e-12)
      expect(lower).toBeGreaterThanOrEqual(effectivenessParallel(x) - 1e-12)
    }
  }))
})
const all = { effectivenessCounter, effectivenessParallel, effectivenessCrossUnmixed, effectivenessCrossWeakerMixed, effectivenessCrossStrongerMixed }
test.each(Object.entries(all))('%s: between nothing and all, rising with size, falling with the capacity ratio', (_, f) => {
  fc.assert(fc.property(units, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (u, r) => {
    const here = f({ units: u, ratio: r })
    expect(here).toBeGreaterThan(0)
    expect(here).toBeLessThan(1)
    if (u < 6) expect(f({ units: u * 0.98, ratio: r })).toBeLessThanOrEqual(here + (f === effectivenessCrossWeakerMixed ? 1e-12 : 0))
    expect(f({ units: u, ratio: r + 0.05 })).toBeLessThanOrEqual(here)
  }))
})
test.each(Object.entries(all))('%s: one stream that does not change leaves 1 − e^−NTU, and a small cooler does not see its arrangement', (_, f) => {
  for (const u of [0.1, 1, 4]) {
    expect(f({ units: u, ratio: 0 })).toBeCloseTo(1 - Math.exp(-u), 12)
    expect(f({ units: u, ratio: 1e-9 })).toBeCloseTo(1 - Math.exp(-u), 8)
  }
  expect(f({ units: 1e-4, ratio: 0.7 }) / 1e-4).toBeCloseTo(1, 3)
})
test('counter flow of equal streams is NTU / (1 + NTU), and comes to it without a jump', () => {
  for (const u of [0.3, 1, 5]) {
    expect(effectivenessCounter({ units: u, ratio: 1 })).toBe(u / (1 + u))
    expect(effectivenessCounter({ units: u, ratio: 1 - 1e-9 })).toBeCloseTo(u / (1 + u), 8)
    expect(effectivenessCounter({ units: u, ratio: 1 - 1e-15 })).toBeCloseTo(u / (1 + u), 12)
  }
})
test('an endless cooler: counter flow reaches all, parallel flow 1 / (1 + ratio)', () => {
  expect(effectivenessCounter({ units: 200, ratio: 0.6 })).toBeCloseTo(1, 12)
  expect(effectivenessParallel({ units: 200, ratio: 0.6 })).toBeCloseTo(1 / 1.6, 12)
  expect(effectivenessCrossUnmixed({ units: 60, ratio: 0.3 })).toBeCloseTo(1, 6)
})

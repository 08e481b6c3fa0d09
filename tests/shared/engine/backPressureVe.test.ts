import fc from 'fast-check'
import { expect, test } from 'vitest'
import { backPressureVe } from '@trochoid/compute/engine/backPressureVe.ts'

const base = { ve: 0.95, backPressureRatio: 1, referenceRatio: 1, overlapFactor: 0, compressionRatio: 9 }

test('it gives the stated filling back at the reference ratio', () => {
  fc.assert(fc.property(fc.double({ min: 0.3, max: 1.2, noNaN: true }), fc.double({ min: 0.5, max: 4, noNaN: true }), fc.double({ min: 0, max: 0.6, noNaN: true }), fc.double({ min: 6, max: 14, noNaN: true }),
    (ve, ratio, overlapFactor, compressionRatio) => {
      expect(backPressureVe({ ve, backPressureRatio: ratio, referenceRatio: ratio, overlapFactor, compressionRatio })).toBeCloseTo(ve, 12)
    }))
})
test('without overlap, half as much again behind the engine as before it costs 4.5 % at compression ratio 9', () => {
  expect(backPressureVe({ ...base, backPressureRatio: 1.5 }) / 0.95).toBeCloseTo(1 - 0.5 / (1.4 * 8), 12)
})
test('the overlap factor is the share lost per unit of ratio, close to the reference', () => {
  const slope = (overlapFactor: number) => (backPressureVe({ ...base, overlapFactor, backPressureRatio: 1.001 }) / 0.95 - 1) / 0.001
  expect(slope(0.2) - slope(0)).toBeCloseTo(-0.2, 3)
})
test('a better-scavenged engine fills better, a tighter one less well, and never to nothing', () => {
  let last = Infinity
  for (let ratio = 0.4; ratio < 60; ratio *= 1.02) {
    const ve = backPressureVe({ ...base, backPressureRatio: ratio, overlapFactor: 0.1 })
    expect(ve).toBeLessThan(last)
    expect(ve).toBeGreaterThan(0)
    last = ve
  }
})
test('where it is bounded, value and slope go on without a jump', () => {
  const at = (ratio: number) => backPressureVe({ ...base, backPressureRatio: ratio })
  const join = 1 + 0.5 * 1.4 * 8
  const step = 1e-6
  expect(at(join + step)).toBeCloseTo(at(join - step), 5)
  const before = (at(join - step) - at(join - 2 * step)) / step
  const after = (at(join + 2 * step) - at(join + step)) / step
  expect(after).toBeCloseTo(before, 4)
  expect(at(join)).toBeCloseTo(0.95 / 2, 9)
  expect(at(join + 5)).toBeCloseTo(0.95 * 0.25 / (0.5 + 5 / 11.2), 9)
})

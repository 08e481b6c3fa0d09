import { expect, test } from 'vitest'
import { uniform } from '@trochoid/compute/uncertainty/uniform.ts'
import reference from '../../reference/uncertainty.json' with { type: 'json' }

const many = (seed: number, count: number, skip = 0): number[] => { const next = uniform(seed, skip); return Array.from({ length: count }, () => next()) }

test.each(Object.entries(reference.generator))('the draw from seed %s is what whole numbers of any length give', (seed, expected) => {
  const got = many(Number(seed), 2000).filter((_, i) => i % 333 === 0)
  expected.forEach((value, i) => expect(got[i]).toBeCloseTo(value, 12))
})
test('a part of the draw is the same when it is made by itself', () => {
  const whole = many(7, 3000)
  for (const skip of [1, 2, 17, 1024, 2999]) expect(many(7, 1, skip)[0]).toBe(whole[skip])
})
test('it is evenly spread, and neighbours do not depend on one another', () => {
  const n = 100_000
  const drawn = many(1, n)
  const mean = drawn.reduce((a, b) => a + b, 0) / n
  // Four standard errors of each.
  expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * n))
  const tenths = new Array<number>(10).fill(0)
  for (const r of drawn) tenths[Math.floor(r * 10)]!++
  for (const count of tenths) expect(Math.abs(count - n / 10)).toBeLessThan(4 * Math.sqrt(n * 0.09))
  const along = drawn.slice(1).reduce((sum, r, i) => sum + (r - 0.5) * (drawn[i]! - 0.5), 0) / n
  expect(Math.abs(along * 12)).toBeLessThan(4 / Math.sqrt(n))
  expect(drawn.every((r) => r > 0 && r < 1)).toBe(true)
})
test('neighbouring seeds give draws that have nothing to do with one another', () => {
  const n = 20_000
  const [a, b] = [many(1, n), many(2, n)]
  const together = a.reduce((sum, r, i) => sum + (r - 0.5) * (b[i]! - 0.5), 0) / n
  expect(Math.abs(together * 12)).toBeLessThan(4 / Math.sqrt(n))
})

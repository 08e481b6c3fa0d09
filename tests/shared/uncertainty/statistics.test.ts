import fc from 'fast-check'
import { expect, test } from 'vitest'
import { correlation, interval95, meanAndDeviation, ranks } from '@trochoid/compute/uncertainty/statistics.ts'
import reference from '../../reference/uncertainty.json' with { type: 'json' }

const { a, b, spearman, ranks: places } = reference.ranked

test('ranks with ties are those of SciPy', () => expect([...ranks(a)]).toEqual(places))
test('the correlation of ranks is SciPy’s Spearman', () => expect(correlation(ranks(a), ranks(b))).toBeCloseTo(spearman, 12))
test('any rising function keeps the ranks, any falling one turns them round', () => {
  fc.assert(fc.property(fc.uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 3, maxLength: 40 }), (x) => {
    expect(correlation(ranks(x), ranks(x.map((v) => Math.exp(v / 100))))).toBeCloseTo(1, 12)
    expect(correlation(ranks(x), ranks(x.map((v) => -(v ** 3))))).toBeCloseTo(-1, 12)
  }))
})
test('what never changes goes with nothing', () => expect(correlation([1, 2, 3], [5, 5, 5])).toBe(0))
test('mean and standard deviation leave out what is no number', () => {
  const { mean, deviation } = meanAndDeviation([1, NaN, 3, Infinity])
  expect([mean, deviation]).toEqual([2, Math.SQRT2])
})
test('the interval runs from the 50th to the 1950th of 2000 samples, as JCGM 101, 7.7.2 counts them', () => {
  expect(interval95(Array.from({ length: 2000 }, (_, i) => 2000 - i))).toEqual([50, 1950])
})

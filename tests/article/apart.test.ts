import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apart } from '../../src/article/figures/plot/apart.ts'

const falling = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1, maxLength: 6 }).map((list) => list.sort((a, b) => b - a))

test('labels that stand far enough apart are left where they are', () => {
  expect(apart([200, 150, 90], 25)).toEqual([200, 150, 90])
})
test('two that meet part by as much on either side', () => {
  expect(apart([100, 100], 20)).toEqual([110, 90])
})
test('labels never stand nearer than asked, and their middle stays', () => {
  fc.assert(fc.property(falling, (places) => {
    const at = apart(places, 25)
    for (let i = 0; i + 1 < at.length; i++) expect(at[i]! - at[i + 1]!).toBeGreaterThan(24)
    const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length
    expect(mean(at)).toBeCloseTo(mean(places), 6)
  }))
})

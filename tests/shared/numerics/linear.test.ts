import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { solveLinear } from '@trochoid/compute/numerics/linear.ts'

const solved = (rows: readonly (readonly number[])[], right: readonly number[]): number[] | null => {
  const b = Float64Array.from(right)
  return solveLinear(Float64Array.from(rows.flat()), b, right.length) ? [...b] : null
}
const times = (rows: readonly (readonly number[])[], x: readonly number[]): number[] => rows.map((row) => row.reduce((sum, v, j) => sum + v * x[j]!, 0))

test('what it finds gives the right-hand side back, whatever the order of rows and the signs', () => {
  const entry = fc.double({ min: -1, max: 1, noNaN: true })
  fc.assert(fc.property(fc.integer({ min: 1, max: 5 }), fc.array(entry, { minLength: 25, maxLength: 25 }), fc.array(entry, { minLength: 5, maxLength: 5 }), fc.integer({ min: 0, max: 4 }), fc.boolean(), (n, entries, x, turn, negative) => {
    // A strong diagonal keeps it far from singular; turning the rows takes the strong entries off the diagonal.
    const rows = Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (i === j ? (negative ? -6 : 6) : 0) + entries[i * 5 + j]!))
    const turned = rows.map((_, i) => rows[(i + turn) % n]!)
    const found = solved(turned, times(turned, x.slice(0, n)))!
    for (let i = 0; i < n; i++) expect(Math.abs(found[i]! - x[i]!)).toBeLessThan(1e-13)
  }), { numRuns: 200 })
})
// G. H. Golub, C. F. Van Loan, Matrix Computations, 4th ed. (2013), 3.4.1: without row exchange a small pivot ruins the answer.
test('a small pivot is exchanged, not divided by', () => {
  const found = solved([[1e-20, 1], [1, 1]], [1, 2])!
  expect(found[0]).toBeCloseTo(1, 12)
  expect(found[1]).toBeCloseTo(1, 12)
})
test('the row to exchange is the one with the largest entry, sign aside', () => {
  for (const sign of [1, -1]) {
    const found = solved([[1e-20, 2, 1], [1e-18, 1, 3], [sign, 1, 1]], [3, 4, 2 + sign])!
    for (const x of found) expect(x).toBeCloseTo(1, 12)
  }
})
describe('singular is what is small beside the largest entry', () => {
  test('small numbers all over are not', () => expect(solved([[1e-30, 0], [0, 2e-30]], [1e-30, 1e-30])).toEqual([1, 0.5]))
  test('a diagonal of 1 and 1e-15 is, of 1 and 1e-13 is not', () => {
    expect(solved([[1, 0], [0, 1e-15]], [1, 1])).toBeNull()
    expect(solved([[1, 0], [0, -1e-13]], [1, 1e-13])).toEqual([1, -1])
  })
  test('the largest entry counts wherever it stands and whatever its sign', () => {
    expect(solved([[1e-15, 0], [0, -1]], [1, 1])).toBeNull()
    expect(solved([[1e-8, -1e8], [0, 1e-8]], [1, 1])).toBeNull()
  })
  test('nothing at all is', () => expect(solved([[0]], [1])).toBeNull())
})

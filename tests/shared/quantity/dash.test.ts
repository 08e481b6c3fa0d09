import { expect, test } from 'vitest'
import { dashBore, dashSizes } from '@trochoid/compute/quantity/dash.ts'

test('the bore of a hose is smaller than the tube it replaces, and grows with its size', () => {
  let before = 0
  for (const size of dashSizes) {
    const bore = dashBore(size)!
    expect(bore).toBeLessThan((size / 16) * 0.0254)
    expect(bore).toBeGreaterThan(before)
    before = bore
  }
})
// MIL-H-8794 hose sizes, inside diameter in inches; from memory.
test.each([[4, 3 / 16], [6, 5 / 16], [8, 13 / 32], [10, 1 / 2], [12, 5 / 8], [16, 7 / 8], [20, 9 / 8], [24, 11 / 8], [32, 29 / 16]])('dash %s', (size, inches) => expect(dashBore(size)).toBeCloseTo(inches * 0.0254, 12))
test('a size that is not made has none', () => expect([0, 7, 9, 33, -6].map(dashBore)).toEqual([null, null, null, null, null]))

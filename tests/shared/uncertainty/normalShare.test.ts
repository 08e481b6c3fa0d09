import { expect, test } from 'vitest'
import { normalShare } from '@trochoid/compute/uncertainty/normalShare.ts'
import reference from '../../reference/uncertainty.json' with { type: 'json' }

test.each(reference.normal)('at %d it is SciPy’s within the 1.5e-7 that the source states', (z, share) => {
  expect(Math.abs(normalShare({ z }) - share)).toBeLessThan(1e-7)
})
test('it is symmetric and rises', () => {
  for (let z = -5; z < 5; z += 0.1) {
    expect(normalShare({ z }) + normalShare({ z: -z })).toBeCloseTo(1, 14)
    expect(normalShare({ z: z + 0.1 })).toBeGreaterThan(normalShare({ z }))
  }
  expect([normalShare({ z: Infinity }), normalShare({ z: -Infinity })]).toEqual([1, 0])
})

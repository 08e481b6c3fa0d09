import { expect, test } from 'vitest'
import { draw, uncertaintyOf, type Form } from '@trochoid/compute/uncertainty/spread.ts'
import { meanAndDeviation } from '@trochoid/compute/uncertainty/statistics.ts'
import { uniform } from '@trochoid/compute/uncertainty/uniform.ts'
import reference from '../../reference/uncertainty.json' with { type: 'json' }

const n = 100_000
const drawn = (form: Form): number[] => { const next = uniform(11); return Array.from({ length: n }, () => draw({ form, half: 2 }, next(), next())) }

test.each(['normal', 'rectangular', 'triangular'] as const)('a %s spread has its middle and its standard uncertainty', (form) => {
  const { mean, deviation } = meanAndDeviation(drawn(form))
  const u = uncertaintyOf({ form, half: 2 })
  expect(Math.abs(mean)).toBeLessThan((4 * u) / Math.sqrt(n))
  expect(Math.abs(deviation / u - 1)).toBeLessThan(4 * Math.sqrt(0.5 / n))
})
test('a rectangular and a triangular spread keep inside their half width, a normal one 95 times in 100', () => {
  for (const form of ['rectangular', 'triangular'] as const) expect(Math.max(...drawn(form).map(Math.abs))).toBeLessThanOrEqual(2)
  const inside = drawn('normal').filter((x) => Math.abs(x) <= 2).length / n
  expect(Math.abs(inside - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / n))
})
test.each(reference.triangular)('a share of %d of a triangular spread lies below what SciPy says', (share, at) => {
  const below = drawn('triangular').filter((x) => x <= at).length / n
  expect(Math.abs(below - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / n))
})
test('no spread, no draw', () => {
  for (const form of ['normal', 'rectangular', 'triangular'] as const) expect(draw({ form, half: 0 }, 0.3, 0.9)).toBeCloseTo(0, 15)
})

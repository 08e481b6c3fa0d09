import { expect, test } from 'vitest'
import { gaugeBoost } from '@trochoid/compute/boost/gaugeBoost.ts'

test('reads zero in open air and less than zero on a throttled engine', () => {
  expect(gaugeBoost({ manifold: 101325, outside: 101325 })).toBe(0)
  expect(gaugeBoost({ manifold: 50e3, outside: 101325 })).toBeLessThan(0)
})

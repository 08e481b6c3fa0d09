import { expect, test } from 'vitest'
import { airCompressibility } from '@trochoid/compute/media/airCompressibility.ts'
import { gasDensity } from '@trochoid/compute/engine/gasDensity.ts'
import { moistAirDensity } from '@trochoid/compute/media/moistAirDensity.ts'

test('dry, it is the ideal gas over its compressibility', () => {
  const x = { pressure: 1e5, temperature: 293.15, share: 0 }
  expect((moistAirDensity(x) * airCompressibility(x)) / gasDensity(x)).toBeCloseTo(1, 4)
})
test('one part of vapour in a hundred lightens air by 0.38 %', () => {
  const at = (share: number) => moistAirDensity({ pressure: 1e5, temperature: 293.15, share })
  expect(at(0.01) / at(0)).toBeCloseTo(1 - 0.01 * (1 - 18.01528 / 28.96546), 4)
})

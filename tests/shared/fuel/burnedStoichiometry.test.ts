import { expect, test } from 'vitest'
import { blendStoichiometry } from '@trochoid/compute/fuel/blendStoichiometry.ts'
import { burnedStoichiometry } from '@trochoid/compute/fuel/burnedStoichiometry.ts'

const fuel = { ethanolShare: 0.05, petrolDensity: 745, petrolHydrogen: 1.85 }

test('without oil it is that of the blend; with a little oil it moves a little', () => {
  expect(burnedStoichiometry({ ...fuel, oilShare: 0, oilDensity: 870 })).toBe(blendStoichiometry(fuel))
  const some = burnedStoichiometry({ ...fuel, oilShare: 0.01, oilDensity: 870 })
  expect(Math.abs(some / blendStoichiometry(fuel) - 1)).toBeLessThan(0.001)
  expect(some).not.toBe(blendStoichiometry(fuel))
})

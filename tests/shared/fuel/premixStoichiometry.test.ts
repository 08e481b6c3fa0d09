import { expect, test } from 'vitest'
import { premixLambdaShift } from '@trochoid/compute/fuel/premixLambdaShift.ts'
import { premixStoichiometry } from '@trochoid/compute/fuel/premixStoichiometry.ts'
import { stoichiometricRatioOf } from '@trochoid/compute/fuel/stoichiometricRatioOf.ts'

const fuel = { oilDensity: 870, fuelDensity: 745, ratio: 14.5 }
const oil = stoichiometricRatioOf({ hydrogen: 1.9, oxygen: 0 })

test('without oil nothing changes', () => {
  expect(premixStoichiometry({ share: 0, ...fuel })).toBe(14.5)
  expect(premixLambdaShift({ share: 0, ...fuel, mixedRatio: 14.5 })).toBeCloseTo(0, 15)
})
test('a part of oil for each part of fuel of equal density gives the mean', () => {
  expect(premixStoichiometry({ share: 1, oilDensity: 800, fuelDensity: 800, ratio: 14.5 })).toBeCloseTo((oil + 14.5) / 2, 12)
})
test('denser oil weighs more', () => {
  const heavy = premixStoichiometry({ share: 0.02, ...fuel, oilDensity: 950, ratio: 9 })
  const light = premixStoichiometry({ share: 0.02, ...fuel, oilDensity: 820, ratio: 9 })
  expect(heavy).toBeGreaterThan(light)
  expect(heavy).toBeLessThan(oil)
})
test('on petrol at 1 in 100 lambda moves by less than half a percent', () => {
  const mixedRatio = premixStoichiometry({ share: 0.01, ...fuel })
  const shift = premixLambdaShift({ share: 0.01, ...fuel, mixedRatio })
  expect(Math.abs(shift)).toBeLessThan(0.005)
  expect(shift).toBeLessThan(0)
})
test('the shift is that of the air asked by one injected volume, before and after', () => {
  const share = 0.04
  const mixedRatio = premixStoichiometry({ share, ...fuel })
  const before = fuel.fuelDensity * fuel.ratio
  const after = ((fuel.fuelDensity + share * fuel.oilDensity) / (1 + share)) * mixedRatio
  expect(premixLambdaShift({ share, ...fuel, mixedRatio })).toBeCloseTo(before / after - 1, 12)
})

import { expect, test } from 'vitest'
import { turbineOutletTemperature } from '@trochoid/compute/boost/turbineOutletTemperature.ts'
import { compressorOutletTemperature } from '@trochoid/compute/boost/compressorOutletTemperature.ts'

test('an ideal turbine undoes an ideal compressor', () => {
  const hot = compressorOutletTemperature({ inletTemperature: 300, ratio: 3, efficiency: 1 })
  expect(turbineOutletTemperature({ temperature: hot, expansionRatio: 3, efficiency: 1, heatRatio: 1.4 })).toBeCloseTo(300, 9)
})
test('without efficiency the gas keeps its heat', () => expect(turbineOutletTemperature({ temperature: 1200, expansionRatio: 2, efficiency: 0, heatRatio: 1.3 })).toBe(1200))

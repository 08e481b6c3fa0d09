import { expect, test } from 'vitest'
import { compressorOutletTemperature } from '@trochoid/compute/boost/compressorOutletTemperature.ts'

test('ratio 1 leaves the air as it was', () => expect(compressorOutletTemperature({ inletTemperature: 300, ratio: 1, efficiency: 0.7 })).toBe(300))
test('a poorer compressor makes hotter air; half the efficiency twice the rise', () => {
  const rise = (efficiency: number): number => compressorOutletTemperature({ inletTemperature: 300, ratio: 2, efficiency }) - 300
  expect(rise(0.35)).toBeCloseTo(2 * rise(0.7), 9)
})
test('two ideal stages in a row do what one does', () => {
  const one = (inletTemperature: number, ratio: number): number => compressorOutletTemperature({ inletTemperature, ratio, efficiency: 1 })
  expect(one(one(300, 1.5), 2)).toBeCloseTo(one(300, 3), 9)
})

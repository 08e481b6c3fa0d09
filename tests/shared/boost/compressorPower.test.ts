import { expect, test } from 'vitest'
import { compressorPower } from '@trochoid/compute/boost/compressorPower.ts'

test('no rise, no power; twice the air, twice the power', () => {
  expect(compressorPower({ flow: 0.3, inletTemperature: 300, outletTemperature: 300 })).toBe(0)
  const at = (flow: number): number => compressorPower({ flow, inletTemperature: 300, outletTemperature: 380 })
  expect(at(0.6)).toBeCloseTo(2 * at(0.3), 9)
})

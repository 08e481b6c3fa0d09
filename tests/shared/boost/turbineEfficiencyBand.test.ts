import { expect, test } from 'vitest'
import { turbineEfficiencyBand } from '@trochoid/compute/boost/turbineEfficiencyBand.ts'

test('lies evenly about the number on the sheet', () => {
  expect(turbineEfficiencyBand({ efficiency: 0.6, band: 0 })).toEqual({ low: 0.6, high: 0.6 })
  const { low, high } = turbineEfficiencyBand({ efficiency: 0.6, band: 0.05 })
  expect((low + high) / 2).toBeCloseTo(0.6, 15)
  expect(high - low).toBeCloseTo(0.1, 15)
})

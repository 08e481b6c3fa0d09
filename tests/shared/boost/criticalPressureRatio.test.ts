import { expect, test } from 'vitest'
import { criticalPressureRatio } from '@trochoid/compute/boost/criticalPressureRatio.ts'

test('falls as the ratio of specific heats rises', () => {
  for (let g = 1.1; g < 1.6; g += 0.05) expect(criticalPressureRatio({ heatRatio: g + 0.05 })).toBeLessThan(criticalPressureRatio({ heatRatio: g }))
})
test('nears 1/√e for a ratio of 1', () => expect(criticalPressureRatio({ heatRatio: 1 + 1e-7 })).toBeCloseTo(Math.exp(-0.5), 5))

import { expect, test } from 'vitest'
import { gasConstantFrom } from '@trochoid/compute/boost/gasConstantFrom.ts'

test('is that of air for air', () => expect(gasConstantFrom({ specificHeat: 1005, heatRatio: 1.4 })).toBeCloseTo(287.1, 1))
test('is the difference of the specific heats', () => expect(gasConstantFrom({ specificHeat: 1300, heatRatio: 1.3 })).toBeCloseTo(1300 - 1300 / 1.3, 10))

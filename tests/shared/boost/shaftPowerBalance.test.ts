import { expect, test } from 'vitest'
import { shaftPowerBalance } from '@trochoid/compute/boost/shaftPowerBalance.ts'
import { turbinePowerAsked } from '@trochoid/compute/boost/turbinePowerAsked.ts'

test('what is asked of the turbine arrives at the compressor', () => {
  expect(shaftPowerBalance({ turbine: turbinePowerAsked({ compressor: 25e3, mechanicalEfficiency: 0.96 }), mechanicalEfficiency: 0.96 })).toBeCloseTo(25e3, 9)
})

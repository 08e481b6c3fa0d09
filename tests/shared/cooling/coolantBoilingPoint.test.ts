import fc from 'fast-check'
import { expect, test } from 'vitest'
import { coolantBoilingPoint } from '@trochoid/compute/cooling/coolantBoilingPoint.ts'
import { waterBoilingTemperature } from '@trochoid/compute/cooling/waterBoilingTemperature.ts'
import { waterMoleShare } from '@trochoid/compute/cooling/waterMoleShare.ts'
import { glycolMassShare } from '@trochoid/compute/cooling/glycolMassShare.ts'
import { waterBoilingPressure } from '@trochoid/compute/cooling/waterBoilingPressure.ts'

test('without glycol it is water', () => {
  fc.assert(fc.property(fc.double({ min: 6e4, max: 3e5, noNaN: true }), (pressure) => {
    expect(coolantBoilingPoint({ pressure, glycol: 0 })).toBeCloseTo(waterBoilingTemperature({ pressure }), 9)
  }))
})
test('rises with pressure and with glycol', () => {
  fc.assert(fc.property(fc.double({ min: 6e4, max: 3e5, noNaN: true }), fc.double({ min: 0, max: 0.55, noNaN: true }), (pressure, glycol) => {
    const here = coolantBoilingPoint({ pressure, glycol })
    expect(coolantBoilingPoint({ pressure: pressure * 1.01, glycol })).toBeGreaterThan(here)
    expect(coolantBoilingPoint({ pressure, glycol: glycol + 0.03 })).toBeGreaterThan(here)
  }))
})
test('at the boiling point the water’s own pressure times its mole share is the pressure', () => {
  const water = waterMoleShare({ glycol: glycolMassShare({ glycol: 0.45 }) })
  expect(water * waterBoilingPressure({ temperature: coolantBoilingPoint({ pressure: 2e5, glycol: 0.45 }) })).toBeCloseTo(2e5, 3)
})

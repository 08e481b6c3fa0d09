import fc from 'fast-check'
import { expect, test } from 'vitest'
import { premixDoseFor } from '@trochoid/compute/fuel/premixDoseFor.ts'
import { premixOilFlowOf } from '@trochoid/compute/fuel/premixOilFlowOf.ts'
import { premixRatioOf } from '@trochoid/compute/fuel/premixRatioOf.ts'
import { premixShareAfter } from '@trochoid/compute/fuel/premixShareAfter.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('the dose brings the tank to the wanted share', () => {
  fc.assert(fc.property(between(1e-3, 0.02), between(1e-3, 0.1), between(0, 0.05), between(0, 0.02), (wanted, added, present, presentShare) => {
    const poured = premixDoseFor({ wanted, added, present, presentShare })
    expect(premixShareAfter({ poured, added, present, presentShare })).toBeCloseTo(wanted, 12)
  }))
})
test('into an empty tank one in two hundred of 40 litres is 200 cm³', () => expect(premixDoseFor({ wanted: 1 / 200, added: 0.04, present: 0, presentShare: 0.01 })).toBeCloseTo(200e-6, 12))
test('a tank with too much oil already takes less than nothing', () => expect(premixDoseFor({ wanted: 0.005, added: 0.01, present: 0.03, presentShare: 0.01 })).toBeLessThan(0))
test('half a percent is two hundred to one', () => expect(premixRatioOf({ share: 0.005 })).toBeCloseTo(200, 12))
test('oil by mass is more than by volume, as oil is denser', () => expect(premixOilFlowOf({ fuelFlow: 0.04, share: 0.005, oilDensity: 870, fuelDensity: 725 })).toBeCloseTo((0.04 * 0.005 * 1.2) / (1 + 0.005 * 1.2), 12))

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { burnedPower } from '@trochoid/compute/cooling/burnedPower.ts'
import { chargeEnthalpy } from '@trochoid/compute/cooling/chargeEnthalpy.ts'
import { exhaustHeat } from '@trochoid/compute/cooling/exhaustHeat.ts'
import { exhaustHeatBand } from '@trochoid/compute/cooling/exhaustHeatBand.ts'
import { heatBalanceGap } from '@trochoid/compute/cooling/heatBalanceGap.ts'
import { heatShare } from '@trochoid/compute/cooling/heatShare.ts'
import { releasedHeat } from '@trochoid/compute/cooling/releasedHeat.ts'
import { shareOfReleased } from '@trochoid/compute/cooling/shareOfReleased.ts'
import { specificEnthalpyOf } from '@trochoid/compute/cooling/specificEnthalpyOf.ts'
import { unburnedHeat } from '@trochoid/compute/cooling/unburnedHeat.ts'

const share = fc.double({ min: 0.01, max: 0.3, noNaN: true })
test('the whole split closes: what goes in comes out', () => {
  fc.assert(fc.property(fc.double({ min: 1e4, max: 2e6, noNaN: true }), fc.double({ min: 0.6, max: 1, noNaN: true }), share, share, share, share, fc.double({ min: 280, max: 400, noNaN: true }), (fuelPower, releasedShare, c, o, s, e, temperature) => {
    const released = releasedHeat({ fuelPower, releasedShare })
    const unburned = unburnedHeat({ fuelPower, releasedShare })
    const coolant = heatShare({ power: released, share: c }), oil = heatShare({ power: released, share: o }), surface = heatShare({ power: released, share: s })
    const brake = e * fuelPower
    const charge = chargeEnthalpy({ flow: 0.3, temperature })
    const exhaust = exhaustHeat({ released, charge, brake, coolant, oil, surface })
    expect(Math.abs(heatBalanceGap({ fuelPower, charge, brake, coolant, oil, surface, exhaust, unburned }))).toBeLessThan(1e-9 * fuelPower)
    expect(released + unburned).toBeCloseTo(fuelPower, 6)
    expect(burnedPower({ fuelPower, unburned })).toBeCloseTo(released, 6)
    expect(shareOfReleased({ heat: coolant, released })).toBeCloseTo(c, 12)
  }))
})
test('a charge at 25 °C brings nothing, a warmer one something, a colder one takes it', () => {
  expect(chargeEnthalpy({ flow: 0.3, temperature: 298.15 })).toBe(0)
  expect(chargeEnthalpy({ flow: 0.3, temperature: 308.15 })).toBeCloseTo(0.3 * 10050, 6)
  expect(chargeEnthalpy({ flow: 0.3, temperature: 288.15 })).toBeLessThan(0)
})
test('the band lies evenly about the heat, and enthalpy times flow is the heat again', () => {
  const { low, high } = exhaustHeatBand({ heat: 4e5, fuelPower: 1e6, band: 0.02 })
  expect([low, high]).toEqual([380000, 420000])
  expect(specificEnthalpyOf({ heat: 4e5, flow: 0.4 })).toBe(1e6)
})

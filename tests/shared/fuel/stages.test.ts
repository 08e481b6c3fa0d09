import fc from 'fast-check'
import { expect, test } from 'vitest'
import { blendWeight } from '@trochoid/compute/fuel/blendWeight.ts'
import { closingTimeLeft } from '@trochoid/compute/fuel/closingTimeLeft.ts'
import { dutyOf } from '@trochoid/compute/fuel/dutyOf.ts'
import { fuelAtHandover } from '@trochoid/compute/fuel/fuelAtHandover.ts'
import { injectorFlowAt } from '@trochoid/compute/fuel/injectorFlowAt.ts'
import { injectorFlowOfFluid } from '@trochoid/compute/fuel/injectorFlowOfFluid.ts'
import { largerDuty } from '@trochoid/compute/fuel/largerDuty.ts'
import { leastFuelOf } from '@trochoid/compute/fuel/leastFuelOf.ts'
import { longestPulseOf } from '@trochoid/compute/fuel/longestPulseOf.ts'
import { massFlowForPulse } from '@trochoid/compute/fuel/massFlowForPulse.ts'
import { pulseFor } from '@trochoid/compute/fuel/pulseFor.ts'
import { pulseReserveOf } from '@trochoid/compute/fuel/pulseReserveOf.ts'
import { ratedFlowFor } from '@trochoid/compute/fuel/ratedFlowFor.ts'
import { stageMassFlow } from '@trochoid/compute/fuel/stageMassFlow.ts'
import { stagePart } from '@trochoid/compute/fuel/stagePart.ts'
import { stageShareOf } from '@trochoid/compute/fuel/stageShareOf.ts'
import { switchOffPressure } from '@trochoid/compute/fuel/switchOffPressure.ts'
import { turnTimeOf } from '@trochoid/compute/fuel/turnTimeOf.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('a shaft turn takes 7.5 ms at 8,000 rpm', () => expect(turnTimeOf({ speed: (8000 * Math.PI) / 30 })).toBeCloseTo(0.0075, 12))
test('a rating found for a mass flow passes that mass flow', () => {
  fc.assert(fc.property(between(1e-3, 0.05), between(650, 800), between(1.5e5, 6e5), (massFlow, density, drop) => {
    const rated = ratedFlowFor({ massFlow, density, ratedDensity: 684, drop, ratedDrop: 3e5 })
    const flow = injectorFlowOfFluid({ flow: injectorFlowAt({ ratedFlow: rated, drop, ratedDrop: 3e5 }), ratedDensity: 684, density })
    expect(stageMassFlow({ flow, number: 1, density }) / massFlow).toBeCloseTo(1, 9)
  }))
})
test('the mass flow for a pulse gives that pulse', () => {
  fc.assert(fc.property(between(5e-6, 2e-4), between(1.2e-3, 2e-2), (fuel, pulse) => {
    expect(pulseFor({ fuel, flow: massFlowForPulse({ fuel, pulse, deadTime: 1e-3 }), deadTime: 1e-3 })).toBeCloseTo(pulse, 12)
  }))
})
test('the least fuel asks the smallest pulse', () => {
  const fuel = leastFuelOf({ smallest: 1.8e-3, deadTime: 1e-3, flow: 0.02 })
  expect(pulseFor({ fuel, flow: 0.02, deadTime: 1e-3 })).toBeCloseTo(1.8e-3, 12)
  expect(pulseReserveOf({ pulse: 2e-3, smallest: 1.8e-3 })).toBeCloseTo(0.2e-3, 12)
})
test('shares in proportion to flow ask both stages the same open time', () => {
  const share = stageShareOf({ primaryFlow: 0.008, secondaryFlow: 0.02 })
  const secondary = stagePart({ fuel: 1e-4, share })
  expect(secondary / 0.02).toBeCloseTo((1e-4 - secondary) / 0.008, 12)
})
test('duty and time left tell the same', () => {
  const turn = turnTimeOf({ speed: 700 })
  const primary = 0.6 * turn
  const secondary = 0.8 * turn
  const duty = largerDuty({ primary: dutyOf({ pulse: primary, turn }), secondary: dutyOf({ pulse: secondary, turn }) })
  expect(duty).toBeCloseTo(0.8, 12)
  expect(closingTimeLeft({ turn, primary, secondary })).toBeCloseTo((1 - duty) * turn, 12)
  expect(longestPulseOf({ limit: 0.8, turn })).toBeCloseTo(secondary, 12)
})
test('at the hand-over pressure itself the fuel is the fuel; leaner takes less', () => {
  const now = { fuel: 1e-4, manifold: 1.1e5, lambda: 0.9, handoverLambda: 0.9 }
  expect(fuelAtHandover({ ...now, handover: 1.1e5 })).toBeCloseTo(1e-4, 15)
  expect(fuelAtHandover({ ...now, handover: 0.55e5 })).toBeCloseTo(0.5e-4, 15)
  expect(fuelAtHandover({ ...now, handover: 1.1e5, handoverLambda: 1 })).toBeCloseTo(0.9e-4, 15)
})
test('the hand-over runs from nothing to all over its width', () => {
  const at = (manifold: number): number => blendWeight({ manifold, start: 1e5, width: 2e4 })
  expect([at(9e4), at(1e5), at(1.1e5), at(1.2e5), at(2e5)]).toEqual([0, 0, 0.5, 1, 1])
  expect(switchOffPressure({ start: 1e5, hysteresis: 8e3 })).toBe(92e3)
})

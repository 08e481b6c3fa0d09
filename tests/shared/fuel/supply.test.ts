import fc from 'fast-check'
import { expect, test } from 'vitest'
import { flowShareOf } from '@trochoid/compute/fuel/flowShareOf.ts'
import { hoseBoreOf } from '@trochoid/compute/fuel/hoseBoreOf.ts'
import { boreForSpeed } from '@trochoid/compute/fuel/boreForSpeed.ts'
import { lineSpeedOf } from '@trochoid/compute/fuel/lineSpeedOf.ts'
import { linkFlowParallel } from '@trochoid/compute/fuel/linkFlowParallel.ts'
import { linkFlowSeries } from '@trochoid/compute/fuel/linkFlowSeries.ts'
import { nozzleDropOf } from '@trochoid/compute/fuel/nozzleDropOf.ts'
import { pressureDownstream } from '@trochoid/compute/fuel/pressureDownstream.ts'
import { pressureUpstream } from '@trochoid/compute/fuel/pressureUpstream.ts'
import { pumpFlowAtPressure } from '@trochoid/compute/fuel/pumpFlowAtPressure.ts'
import { pumpFlowAtVoltage } from '@trochoid/compute/fuel/pumpFlowAtVoltage.ts'
import { referencedPressure } from '@trochoid/compute/fuel/referencedPressure.ts'

test('a referenced regulator keeps its setting across the nozzle whatever the manifold and the weather do', () => {
  fc.assert(fc.property(fc.double({ min: 2e4, max: 4e5, noNaN: true }), fc.double({ min: 6e4, max: 1.08e5, noNaN: true }), (manifold, outside) => {
    expect(nozzleDropOf({ rail: referencedPressure({ setting: 3.5e5, manifold, outside }), outside, manifold })).toBeCloseTo(3.5e5, 3)
  }))
})
test('an unreferenced one loses what the manifold gains', () => {
  const drop = (manifold: number): number => nozzleDropOf({ rail: 3.5e5, outside: 1e5, manifold })
  expect(drop(2e5)).toBe(2.5e5)
  expect(drop(1e5) - drop(2e5)).toBe(1e5)
})
test('up and down a line are each other’s reverse', () => expect(pressureDownstream({ before: pressureUpstream({ after: 3e5, loss: 2e4 }), loss: 2e4 })).toBe(3e5))
test('the pump’s line goes through both of its points', () => {
  const pump = { flow: 9e-5, at: 3e5, secondFlow: 7e-5, secondAt: 6e5 }
  expect(pumpFlowAtPressure({ pressure: 3e5, ...pump })).toBe(9e-5)
  expect(pumpFlowAtPressure({ pressure: 6e5, ...pump })).toBeCloseTo(7e-5, 15)
  expect(pumpFlowAtPressure({ pressure: 4.5e5, ...pump })).toBeCloseTo(8e-5, 15)
})
test('at its rated voltage a pump gives its rated flow, two give twice as much', () => {
  const at = (number: number, voltage: number): number => pumpFlowAtVoltage({ flow: 9e-5, number, voltage, ratedVoltage: 13.5, exponent: 1.3 })
  expect(at(1, 13.5)).toBe(9e-5)
  expect(at(2, 13.5)).toBe(18e-5)
  expect(at(1, 27) / at(1, 13.5)).toBeCloseTo(2 ** 1.3, 12)
})
test('rails in series: what comes in and is not taken by the first goes on to the second', () => {
  expect(linkFlowSeries({ feed: 8e-5, used: 5e-5, share: 0.6 })).toBeCloseTo(6e-5, 15)
  expect(linkFlowSeries({ feed: 5e-5, used: 5e-5, share: 0.6 })).toBeCloseTo(3e-5, 15)
  expect(linkFlowSeries({ feed: 1e-5, used: 5e-5, share: 0.6 })).toBeCloseTo(3e-5, 15)
})
test('in parallel the second branch carries its share, so less than in series', () => {
  expect(linkFlowParallel({ feed: 8e-5, share: 0.6 })).toBeCloseTo(4.8e-5, 15)
  expect(linkFlowParallel({ feed: 8e-5, share: 0.6 })).toBeLessThan(linkFlowSeries({ feed: 8e-5, used: 5e-5, share: 0.6 }))
})
test('equal stages share evenly; one rated at four times the pressure counts half', () => {
  const equal = { primaryFlow: 1e-5, primaryDrop: 3e5, primaries: 1, secondaryFlow: 1e-5, secondaryDrop: 3e5, secondaries: 1 }
  expect(flowShareOf(equal)).toBeCloseTo(0.5, 12)
  expect(flowShareOf({ ...equal, secondaryDrop: 12e5 })).toBeCloseTo(1 / 3, 12)
  expect(flowShareOf({ ...equal, secondaries: 0 })).toBe(0)
})
test('the bore for a speed runs at that speed', () => expect(lineSpeedOf({ flow: 9e-5, bore: boreForSpeed({ flow: 9e-5, speed: 2.5 }) })).toBeCloseTo(2.5, 12))
test('a dash number that is no size has no bore', () => {
  expect(hoseBoreOf({ dash: 7 })).toBeNaN()
  expect(hoseBoreOf({ dash: 6 })).toBeCloseTo(7.9375e-3, 12)
})

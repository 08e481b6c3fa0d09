import { expect, test } from 'vitest'
import { traced } from '@trochoid/compute/formula/trace.ts'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'
import { pumpFlowAtPressure } from '@trochoid/compute/fuel/pumpFlowAtPressure.ts'
import { pumpFlowAtVoltage } from '@trochoid/compute/fuel/pumpFlowAtVoltage.ts'
import { pumpThroughFeed } from '@trochoid/compute/fuel/pumpThroughFeed.ts'

const lPerH = (x: number): number => x / 3.6e6
const feed = { bore: 7.94e-3, length: 4, fittings: 8, roughness: 1.5e-6, density: 740, viscosity: 0.26e-3 }
const pump = { flow: lPerH(340), at: 3e5, secondFlow: lPerH(255), secondAt: 6e5, number: 1, voltage: 13.3, ratedVoltage: 13.5, exponent: 1.3 }
const at = (held: number, change: Partial<typeof feed & typeof pump> = {}) => pumpThroughFeed({ held, ...feed, ...pump, ...change })

test('at the answer the pump’s line and the feed’s loss agree', () => {
  for (const held of [2e5, 4.5e5, 7e5]) {
    const met = at(held)
    expect(met.pressure).toBeCloseTo(held + lineLossOf({ flow: met.flow, ...feed }).loss, 3)
    const given = pumpFlowAtVoltage({ ...pump, flow: pumpFlowAtPressure({ ...pump, pressure: met.pressure }) })
    expect(met.flow / given).toBeCloseTo(1, 8)
  }
})
test('a short wide feed leaves the pump its line', () => {
  const met = at(3e5, { bore: 0.1, length: 0.05, fittings: 0, voltage: 13.5 })
  expect(met.flow).toBeCloseTo(lPerH(340), 9)
  expect(met.pressure).toBeCloseTo(3e5, 0)
})
test('a narrow feed costs flow and raises the pressure at the pump', () => {
  const wide = at(4.5e5)
  const narrow = at(4.5e5, { bore: 4.76e-3 })
  expect(narrow.flow).toBeLessThan(wide.flow)
  expect(narrow.pressure).toBeGreaterThan(wide.pressure)
})
test('two pumps give less than twice as much through one feed', () => {
  const one = at(4.5e5).flow
  const two = at(4.5e5, { number: 2 }).flow
  expect(two).toBeGreaterThan(1.8 * one)
  expect(two).toBeLessThan(2 * one)
})
test('a pump that gives nothing at the held pressure gives nothing', () => {
  expect(at(20e5)).toEqual({ flow: 0, pressure: 20e5 })
  expect(at(4e5, { voltage: -1 })).toEqual({ flow: 0, pressure: 4e5 })
})
test('the search leaves one root in the working, not its tries', () => {
  const { trace } = traced(() => at(4.5e5))
  expect(trace.filter((e) => e.id === 'root')).toHaveLength(1)
  expect(trace.filter((e) => e.id === 'line-loss-of')).toHaveLength(1)
})

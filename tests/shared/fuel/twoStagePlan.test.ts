import { expect, test } from 'vitest'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import twoStagePlan from '@trochoid/compute/fuel/twoStagePlan.calc.ts'

const with_ = (of: AnyCalculation, values: Values) => run(of, { ...startValues(of), ...values }).outputs
const rpm = (x: number): number => (x * Math.PI) / 30
const full = { fuel: 170e-6, speed: rpm(7000), manifold: 2e5, lambda: 0.79, density: 725, drop: 3.5e5, lastDrop: 3.5e5 }

test('both stages together inject the fuel of the charge', () => {
  const x = { ...startValues(twoStagePlan), ...full } as Record<string, number>
  for (const manifold of [8e4, 0.92e5, 1.2e5, 2e5]) {
    const out = with_(twoStagePlan, { ...full, manifold })
    const rate = (flow: number, rated: number): number => flow * Math.sqrt(3.5e5 / rated) * Math.sqrt(x['ratedDensity']! / 725) * 725
    const primary = (out['primaryPulse']! - x['primaryDeadTime']!) * rate(x['primaryFlow']!, x['primaryRatedDrop']!)
    const secondary = out['secondaryPulse']! === 0 ? 0 : (out['secondaryPulse']! - x['secondaryDeadTime']!) * rate(x['secondaryFlow']!, x['secondaryRatedDrop']!)
    expect((primary + secondary) / full.fuel).toBeCloseTo(1, 9)
  }
})
test('secondaries rest below hand-over and never ask less than they repeat above it', () => {
  expect(with_(twoStagePlan, { ...full, manifold: 0.899e5 })['secondaryPulse']).toBe(0)
  const smallest = startValues(twoStagePlan)['secondarySmallest'] as number
  for (let manifold = 0.9e5; manifold < 2e5; manifold += 1e3) expect(with_(twoStagePlan, { ...full, manifold })['secondaryPulse']).toBeGreaterThanOrEqual(smallest * (1 - 1e-12))
})
test('after the width the stages differ by their dead times alone', () => {
  const out = with_(twoStagePlan, full)
  const x = startValues(twoStagePlan) as Record<string, number>
  expect(out['primaryPulse']! - x['primaryDeadTime']!).toBeCloseTo(out['secondaryPulse']! - x['secondaryDeadTime']!, 12)
  expect(out['worstDuty']).toBe(Math.max(out['primaryDuty']!, out['secondaryDuty']!))
})
test('larger secondaries shorten their pulse at hand-over; a later hand-over lengthens it', () => {
  const at = (change: Values): number => with_(twoStagePlan, { ...full, ...change })['secondaryPulseAtHandover']!
  expect(at({ secondaryFlow: 4e-5 })).toBeLessThan(at({}))
  expect(at({ start: 1.3e5 })).toBeGreaterThan(at({}))
  expect(at({ manifold: 0.9e5, handoverLambda: 0.79, fuel: 90e-6 })).toBeCloseTo(with_(twoStagePlan, { ...full, manifold: 1.4e5, fuel: 90e-6 })['secondaryPulse']!, 9)
})
test('just below hand-over the primaries have the duty that the plan gives them there', () => {
  const fuel = (full.fuel * 0.9e5) / full.manifold
  const there = with_(twoStagePlan, { ...full, handoverLambda: 0.79 })['primaryDutyAtHandover']!
  expect(there).toBeCloseTo(with_(twoStagePlan, { ...full, fuel, manifold: 0.8999e5 })['primaryDuty']!, 9)
  expect(with_(twoStagePlan, { ...full, start: 1.2e5 })['primaryDutyAtHandover']).toBeGreaterThan(with_(twoStagePlan, full)['primaryDutyAtHandover']!)
})

import { expect, test } from 'vitest'
import { NoAnswer, run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import fuelPump from '@trochoid/compute/fuel/fuelPump.calc.ts'
import hoseBore from '@trochoid/compute/fuel/hoseBore.calc.ts'
import idlePulse from '@trochoid/compute/fuel/idlePulse.calc.ts'
import injectorDuty from '@trochoid/compute/fuel/injectorDuty.calc.ts'
import injectorSizing from '@trochoid/compute/fuel/injectorSizing.calc.ts'
import lineLoss from '@trochoid/compute/fuel/lineLoss.calc.ts'
import railPressure from '@trochoid/compute/fuel/railPressure.calc.ts'
import regulatorBypass from '@trochoid/compute/fuel/regulatorBypass.calc.ts'
import twoStagePlan from '@trochoid/compute/fuel/twoStagePlan.calc.ts'

const with_ = (of: AnyCalculation, values: Values) => run(of, { ...startValues(of), ...values }).outputs
const rpm = (x: number): number => (x * Math.PI) / 30
const full = { fuel: 170e-6, speed: rpm(7000), manifold: 2e5, lambda: 0.79, density: 725, drop: 3.5e5, lastDrop: 3.5e5 }

test('with the regulator after the rails the last nozzle has the setting, the first the loss between the rails more', () => {
  const out = with_(railPressure, { setting: 3.5e5, reference: 'manifold', place: 'after', manifold: 2e5, outside: 1e5, feedLoss: 2e4, linkLoss: 5e3 })
  expect(out['lastDrop']).toBeCloseTo(3.5e5, 6)
  expect(out['drop']).toBeCloseTo(3.55e5, 6)
  expect(out['rail']).toBeCloseTo(4.55e5, 6)
})
test('with the regulator before the rails both losses are missing at the last nozzle', () => {
  const out = with_(railPressure, { setting: 3.5e5, reference: 'manifold', place: 'before', manifold: 2e5, outside: 1e5, feedLoss: 2e4, linkLoss: 5e3 })
  expect(out['drop']).toBeCloseTo(3.3e5, 6)
  expect(out['lastDrop']).toBeCloseTo(3.25e5, 6)
})
test('an unreferenced regulator gives way to boost', () => {
  const out = with_(railPressure, { setting: 3.5e5, reference: 'atmosphere', place: 'after', manifold: 2e5, outside: 1e5, feedLoss: 0, linkLoss: 0 })
  expect(out['lastDrop']).toBeCloseTo(2.5e5, 6)
})
test('both stages together inject the fuel of the charge', () => {
  const x = { ...startValues(twoStagePlan), ...full } as Record<string, number>
  for (const manifold of [9e4, 1.06e5, 1.2e5, 2e5]) {
    const out = with_(twoStagePlan, { ...full, manifold })
    const rate = (flow: number, rated: number): number => flow * Math.sqrt(3.5e5 / rated) * Math.sqrt(x['ratedDensity']! / 725) * 725
    const primary = (out['primaryPulse']! - x['primaryDeadTime']!) * rate(x['primaryFlow']!, x['primaryRatedDrop']!)
    const secondary = out['secondaryPulse']! === 0 ? 0 : (out['secondaryPulse']! - x['secondaryDeadTime']!) * rate(x['secondaryFlow']!, x['secondaryRatedDrop']!)
    expect((primary + secondary) / full.fuel).toBeCloseTo(1, 9)
  }
})
test('secondaries rest below hand-over and never ask less than they repeat above it', () => {
  expect(with_(twoStagePlan, { ...full, manifold: 1e5 })['secondaryPulse']).toBe(0)
  const smallest = startValues(twoStagePlan)['secondarySmallest'] as number
  for (let manifold = 1.05e5; manifold < 2e5; manifold += 1e3) expect(with_(twoStagePlan, { ...full, manifold })['secondaryPulse']).toBeGreaterThanOrEqual(smallest * (1 - 1e-12))
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
  expect(at({ manifold: 1.05e5, handoverLambda: 0.79, fuel: 90e-6 })).toBeCloseTo(with_(twoStagePlan, { ...full, manifold: 1.4e5, fuel: 90e-6 })['secondaryPulse']!, 9)
})
test('what cannot be fed has no answer, and says why', () => {
  expect(() => with_(twoStagePlan, { ...full, primaries: 0 })).toThrow(NoAnswer)
  expect(() => with_(twoStagePlan, { ...full, drop: 0 })).toThrow(/above the rail/)
  expect(() => with_(twoStagePlan, { ...full, lastDrop: -1e4 })).toThrow(/above the rail/)
  expect(() => with_(injectorDuty, { number: 0 })).toThrow(NoAnswer)
  expect(() => with_(idlePulse, { number: 0 })).toThrow(NoAnswer)
  expect(() => with_(injectorSizing, { smallest: 0.9e-3, deadTime: 1e-3 })).toThrow(/wrong/)
  expect(() => with_(injectorSizing, { smallest: 3.5e-3, deadTime: 3e-3, speed: rpm(20000) })).toThrow(/window/)
  expect(() => with_(hoseBore, { dash: 7 })).toThrow(/no hose/)
  expect(() => with_(fuelPump, { secondAt: 2e5 })).toThrow(/second point/)
  expect(() => with_(fuelPump, { secondFlow: 2e-4 })).toThrow(/second point/)
})
test('one stage alone: a rotary has one shaft turn, so half of what a four-stroke has', () => {
  const out = with_(injectorDuty, { ...full, fuel: 60e-6 })
  expect(out['duty']).toBeCloseTo(out['pulse']! / (60 / 7000), 9)
  expect(out['closing']).toBeCloseTo(60 / 7000 - out['pulse']!, 9)
})
test('the largest primary that idles, on two rotors, has exactly the smallest pulse at idle', () => {
  const base = startValues(injectorSizing) as Record<string, number>
  const { largest } = with_(injectorSizing, { density: 725 })
  const fuel = base['idleFuel']!
  const idleFlow = (fuel * 2 * (startValues(idlePulse)['speed'] as number)) / (2 * Math.PI) / 725
  expect(with_(idlePulse, { ratedFlow: largest!, idleFlow, density: 725 })['reserve']).toBeCloseTo(0, 9)
})
test('the feed carries what the pump gives with the regulator after the rails, else what is burned', () => {
  const base = { used: 5e-5, pumped: 9e-5, density: 725 }
  const after = with_(lineLoss, { ...base, place: 'after' })
  const before = with_(lineLoss, { ...base, place: 'before' })
  expect(after['speed']! / before['speed']!).toBeCloseTo(9 / 5, 9)
  expect(after['feedLoss']).toBeGreaterThan(before['feedLoss']!)
  expect(with_(lineLoss, { ...base, place: 'after', layout: 'parallel' })['linkLoss']).toBeLessThan(after['linkLoss']!)
})
test('a pump near its regulator meets the held pressure alone, one far away the feed too', () => {
  const base = { reference: 'manifold', manifold: 2e5, outside: 1e5, setting: 3.5e5, density: 725 }
  expect(with_(fuelPump, { ...base, place: 'before' })['pressure']).toBeCloseTo(4.5e5, 6)
  const far = with_(fuelPump, { ...base, place: 'after' })
  expect(far['pressure']).toBeGreaterThan(4.5e5)
  expect(far['pumped']).toBeLessThan(with_(fuelPump, { ...base, place: 'before' })['pumped']!)
  expect(with_(fuelPump, { ...base, place: 'before', reference: 'atmosphere' })['pressure']).toBe(3.5e5)
  expect(with_(fuelPump, { ...base, wiring: 0 })['voltage']).toBe(startValues(fuelPump)['supply'])
})
test('what the pump gives and the engine does not burn has to go back', () => {
  const out = with_(regulatorBypass, { pumped: 9e-5, used: 1e-6, fullFlow: 1.4e-4, manifold: 45e3, outside: 1e5, density: 725 })
  expect(out['returned']).toBeCloseTo(8.9e-5, 15)
  expect(with_(regulatorBypass, { pumped: 9e-5, used: 1e-6, fullFlow: 1.4e-4, manifold: 45e3, outside: 1e5, density: 725, reference: 'atmosphere' })['capacity']).toBeGreaterThan(out['capacity']!)
})

import { expect, test } from 'vitest'
import { NoAnswer, run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import fuelPump from '@trochoid/compute/fuel/fuelPump.calc.ts'
import hoseBore from '@trochoid/compute/fuel/hoseBore.calc.ts'
import fuelBlend from '@trochoid/compute/fuel/fuelBlend.calc.ts'
import idlePulse from '@trochoid/compute/fuel/idlePulse.calc.ts'
import injectorDuty from '@trochoid/compute/fuel/injectorDuty.calc.ts'
import injectorSizing from '@trochoid/compute/fuel/injectorSizing.calc.ts'
import injectorFlowAtPressure from '@trochoid/compute/fuel/injectorFlowAtPressure.calc.ts'
import lineLoss from '@trochoid/compute/fuel/lineLoss.calc.ts'
import railPressure from '@trochoid/compute/fuel/railPressure.calc.ts'
import regulatorBypass from '@trochoid/compute/fuel/regulatorBypass.calc.ts'
import sessionFuel from '@trochoid/compute/fuel/sessionFuel.calc.ts'
import twoStagePlan from '@trochoid/compute/fuel/twoStagePlan.calc.ts'
import vapourMargin from '@trochoid/compute/fuel/vapourMargin.calc.ts'

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
test('at idle a regulator that sees outside air pushes more through the nozzle, so the pulse is shorter', () => {
  const of = (reference: string): number => with_(idlePulse, { reference, density: 725, manifold: 45e3, outside: 1e5 })['pulse']!
  expect(of('atmosphere')).toBeLessThan(of('manifold'))
  const open = (reference: string): number => of(reference) - (startValues(idlePulse)['deadTime'] as number)
  expect(open('manifold') / open('atmosphere')).toBeCloseTo(Math.sqrt((3.5e5 + 0.55e5) / 3.5e5), 9)
  const largest = (reference: string): number => with_(injectorSizing, { reference, density: 725, idleManifold: 45e3, outside: 1e5 })['largest']!
  expect(largest('manifold') / largest('atmosphere')).toBeCloseTo(Math.sqrt((3.5e5 + 0.55e5) / 3.5e5), 9)
})
test('the rating asked for full load fills just the share of the turn that was allowed', () => {
  const { needed } = with_(injectorSizing, { ...full, duty: 0.85 })
  const x = startValues(injectorSizing) as Record<string, number>
  const out = with_(injectorDuty, { ...full, ratedFlow: needed!, ratedDrop: x['ratedDrop']!, deadTime: x['deadTime']! })
  expect(out['duty']).toBeCloseTo(0.85, 9)
})
test('volume flow is mass flow over the density at running temperature', () => {
  const out = with_(fuelBlend, { massFlow: 0.04 })
  expect(out['volumeFlow']! * out['density']!).toBeCloseTo(0.04, 12)
  expect(with_(fuelBlend, { massFlow: 0.04, temperature: 340 })['volumeFlow']).toBeGreaterThan(out['volumeFlow']!)
})
test('mass flow of one injector is its volume flow times density', () => {
  const out = with_(injectorFlowAtPressure, { drop: 3e5, density: 684 })
  expect(out['flow']).toBeCloseTo(startValues(injectorFlowAtPressure)['ratedFlow'] as number, 15)
  expect(out['massFlow']).toBeCloseTo(684 * out['flow']!, 12)
})
test('a session on the usable fuel uses just that', () => {
  const out = with_(sessionFuel, { fullFlow: 6e-5 })
  expect(with_(sessionFuel, { fullFlow: 6e-5, time: out['lasts']! })['fuel']).toBeCloseTo(out['usable']!, 12)
})
test('the reserve against boiling is what the rail holds, absolute, less the vapour pressure', () => {
  const out = with_(vapourMargin, { held: 2.5e5, outside: 1e5 })
  expect(out['pressure']).toBe(3.5e5)
  expect(out['reserve']).toBeCloseTo(3.5e5 - out['vapour']!, 6)
})

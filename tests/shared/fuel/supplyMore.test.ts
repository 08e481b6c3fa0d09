import { expect, test } from 'vitest'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import fuelFilter from '@trochoid/compute/fuel/fuelFilter.calc.ts'
import hoseRoute from '@trochoid/compute/fuel/hoseRoute.calc.ts'
import railHeat from '@trochoid/compute/fuel/railHeat.calc.ts'
import railNetwork from '@trochoid/compute/fuel/railNetwork.calc.ts'
import railPulse from '@trochoid/compute/fuel/railPulse.calc.ts'
import surgePot from '@trochoid/compute/fuel/surgePot.calc.ts'
import tankRange from '@trochoid/compute/fuel/tankRange.calc.ts'
import tankWarming from '@trochoid/compute/fuel/tankWarming.calc.ts'

const of = (calc: AnyCalculation, change: Values = {}) => run(calc, { ...startValues(calc), ...change })

test('a steel line is nearly rigid, a soft hose slows the wave to a fraction', () => {
  const line = { drop: 3.5e5, density: 725, bulk: 1e9, bore: 8e-3, wall: 1e-3 }
  const steel = of(railPulse, { ...line, modulus: 2e11 }).outputs
  expect(steel['speed']! / steel['rigid']!).toBeGreaterThan(0.97)
  const soft = of(railPulse, { ...line, wall: 3e-3, modulus: 1e7 }).outputs
  expect(soft['speed']).toBeLessThan(0.3 * soft['rigid']!)
  expect(soft['bound']).toBeLessThan(steel['bound']!)
})
test('a stop faster than the echo keeps the whole bound; twice the time of closing halves a slow one', () => {
  const line = { drop: 3.5e5, density: 725, length: 0.6 }
  const fast = of(railPulse, { ...line, length: 3, closing: 1e-4 }).outputs
  expect(fast['pulse']).toBe(fast['bound'])
  const slow = (closing: number): number => of(railPulse, { ...line, length: 0.1, closing }).outputs['pulse']!
  expect(slow(4e-3)).toBeCloseTo(slow(2e-3) / 2, 6)
})
test('a bend tighter than the hose allows is told so, and the cut adds slack', () => {
  expect(of(hoseRoute, { radius: 0.09 }).says).toContain('kinks')
  const { outputs } = of(hoseRoute, { straight: 1, turned: Math.PI, radius: 0.2, slack: 0.04 })
  expect(outputs['length']! * 0.96).toBeCloseTo(1 + Math.PI * 0.2, 12)
  expect(() => of(hoseRoute, { dash: 7 })).toThrow(/no hose/)
})
test('heat into the rail is that of spacers, bolts and surroundings, and warms a small flow more', () => {
  const { outputs } = of(railHeat, { pumped: 9e-5, density: 725, other: 100 })
  expect(outputs['heat']).toBeCloseTo(outputs['spacers']! + outputs['bolts']! + 100, 9)
  expect(outputs['idle']).toBeGreaterThan(outputs['full']!)
  expect(() => of(railHeat, { still: 0 })).toThrow(/Nothing flows/)
})
test('40 litres at 10 L/100 km reach 400 km', () => {
  const { outputs } = of(tankRange, { tank: 0.05, unusable: 0.005, reserve: 0.005, speed: 100 / 3.6, cruise: 0.01 / 3600, full: 5e-5 })
  expect(outputs['range']).toBeCloseTo(4e5, 3)
  expect(outputs['consumption']).toBeCloseTo(1e-7, 12)
  expect(outputs['flatOut']).toBeCloseTo(0.04 / 5e-5, 6)
})
test('a tank starts where it starts and ends where heat in and heat out agree', () => {
  const still = { pumped: 9e-5, used: 2e-5, density: 725 }
  const at = (time: number) => of(tankWarming, { ...still, time }).outputs
  expect(at(0)['temperature']).toBeCloseTo(startValues(tankWarming)['start'] as number, 9)
  expect(at(1e6)['temperature']).toBeCloseTo(at(1e6)['settled']!, 6)
  expect(at(600)['temperature']).toBeLessThan(at(1200)['temperature']!)
})
test('first warming is heat over heat capacity', () => {
  const { outputs } = of(tankWarming, { pumped: 9e-5, used: 2e-5, density: 725, time: 1, around: 298.15, start: 298.15, volume: 0.03 })
  expect((outputs['temperature']! - 298.15) / (outputs['heat']! / (0.03 * 725 * 2100))).toBeCloseTo(1, 3)
})
test('a filter loses in proportion to flow and to what is blocked', () => {
  const at = (change: Values) => of(fuelFilter, { pumped: 8e-5, ...change }).outputs
  expect(at({ pumped: 1.6e-4 })['clean']).toBeCloseTo(2 * at({})['clean']!, 9)
  expect(at({ open: 0.25 })['loaded']).toBeCloseTo(4 * at({})['clean']!, 9)
})
test('a pot bridges what is burned, and fills again with what the lift pump has over', () => {
  const { outputs } = of(surgePot, { used: 4e-5, pumped: 9e-5, starved: 10, kept: 0.0005, lift: 8e-5 })
  expect(outputs['volume']).toBeCloseTo(0.0009, 12)
  expect(outputs['toTank']).toBeCloseTo(0.0014, 12)
  expect(outputs['refill']).toBeCloseTo(10, 9)
  expect(() => of(surgePot, { used: 9e-5, lift: 8e-5 })).toThrow(/runs empty/)
})
test('a pump that gives less than is burned leaves no steady pressure', () => {
  expect(() => of(railNetwork, { pumped: 1e-5, used: 5e-5 })).toThrow(/no steady pressure/)
  expect(of(railNetwork, { pumped: 9e-5, used: 4e-5, density: 725, place: 'before' }).says).toContain('dead ends')
  expect(of(railNetwork, { pumped: 9e-5, used: 4e-5, density: 725, layout: 'parallel', place: 'after' }).says).toContain('where they join')
})

import { describe, expect, test } from 'vitest'
import { NoAnswer, run } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { hotOutputShare } from '@trochoid/compute/spark/hotOutputShare.ts'
import { injectorsMeanCurrent } from '@trochoid/compute/spark/injectorsMeanCurrent.ts'
import { wireResistanceOf } from '@trochoid/compute/spark/wireResistanceOf.ts'
import budget from '@trochoid/compute/spark/chargingBudget.calc.ts'
import wiring from '@trochoid/compute/spark/wiringDrop.calc.ts'

describe('a hot alternator', () => {
  const stated = { rated: 296.15, hot: 363.15, hotShare: 0.8 }
  test('gives all at the temperature of the test, the hot share hot, and half the loss halfway', () => {
    expect(hotOutputShare({ ...stated, temperature: 296.15 })).toBe(1)
    expect(hotOutputShare({ ...stated, temperature: 363.15 })).toBeCloseTo(0.8, 12)
    expect(hotOutputShare({ ...stated, temperature: 329.65 })).toBeCloseTo(0.9, 12)
  })
})

describe('charging budget', () => {
  const start = {
    ...startValues(budget), speed: 900 * Math.PI / 30, pulse: 2e-3, chargeTime: 3e-3, curve: { x: [100, 200, 400], y: [20, 60, 80] }, pulley: 2, air: 363.15, ratedAir: 296.15, hotAir: 363.15, hotShare: 0.8,
    pumps: 1, fans: 2, controller: 4, lights: 8, cabin: 16, each: 0, count: 2, coils: 1, inductance: 1e-9, current: 0, voltage: 13, driver: 13,
  }
  test('every load counts once', () => expect(budget.answer(start)['load']).toBeCloseTo(31, 6))
  test('injectors count for the share of the turn that they are open', () => {
    const speed = 2 * Math.PI * 15
    expect(injectorsMeanCurrent({ count: 2, each: 1.5, pulse: 1 / 30, speed })).toBeCloseTo(1.5, 9)
    expect(budget.answer({ ...start, each: 1 })['load']! - 31).toBeCloseTo(injectorsMeanCurrent({ count: 2, each: 1, pulse: 2e-3, speed: start.speed }), 6)
  })
  test('supply is the curve at the alternator’s speed, less what heat takes', () => {
    expect(budget.answer(start)['supply']).toBeCloseTo((20 + 40 * (start.speed * 2 - 100) / 100) * 0.8, 9)
  })
  test('says who pays when it does not reach', () => {
    expect(run(budget, { ...start, fans: 90 }).says).toContain('battery pays')
    expect(run(budget, { ...start, fans: 1 }).says).not.toContain('battery pays')
  })
  test('a hot point that is not hotter than the test has no answer', () => {
    expect(() => budget.answer({ ...start, hotAir: 296.15 })).toThrow(NoAnswer)
    expect(() => budget.answer({ ...start, hotAir: 296.16, air: 296.15 })).not.toThrow()
  })
})

describe('a copper wire', () => {
  const wire = { length: 4, area: 2.5e-6, temperature: 293.15 }
  test('1 m of 1 mm² has a fifty-eighth of an ohm at 20 °C', () => expect(wireResistanceOf({ length: 1, area: 1e-6, temperature: 293.15 })).toBeCloseTo(1 / 58, 12))
  test('twice as long is twice, twice as thick is half, ten kelvin are 3.93 %', () => {
    const here = wireResistanceOf(wire)
    expect(wireResistanceOf({ ...wire, length: 8 })).toBeCloseTo(2 * here, 12)
    expect(wireResistanceOf({ ...wire, area: 5e-6 })).toBeCloseTo(here / 2, 12)
    expect(wireResistanceOf({ ...wire, temperature: 303.15 }) / here).toBeCloseTo(1.0393, 9)
  })
  test('heat is drop times current', () => {
    const out = wiring.answer({ ...startValues(wiring), current: 12 })
    expect(out['heat']).toBeCloseTo(out['drop']! * 12, 9)
    expect(out['drop']).toBeCloseTo(out['resistance']! * 12, 12)
  })
})

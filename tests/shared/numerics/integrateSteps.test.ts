import { describe, expect, test } from 'vitest'
import { integrate, type Span } from '@trochoid/compute/numerics/rungeKutta.ts'
import { type Rates } from '@trochoid/compute/numerics/dormandPrince.ts'

const decay = (rate: number): Rates => (_, y, dy) => { for (let i = 0; i < y.length; i++) dy[i] = -rate * y[i]! }
const span = (more: Partial<Span> = {}): Span => ({ from: 0, to: 3, start: [1], relative: 1e-6, absolute: 1e-9, ...more })

describe('the first step', () => {
  test('is hardly refused nor far too short, for what is slow and what is fast, wherever time begins', () => {
    for (const rate of [1e-4, 0.01, 1, 100, 1e4]) for (const from of [0, 5]) {
      const got = integrate(decay(rate), span({ from: from / rate, to: (from + 3) / rate }))
      expect(got.rejected, `rate ${rate}`).toBeLessThanOrEqual(1)
      expect(got.steps, `rate ${rate}`).toBeLessThan(30)
      const first = got.t[1]! - got.t[0]!
      expect(first * rate, `rate ${rate}`).toBeGreaterThan(1e-5)
      expect(first * rate, `rate ${rate}`).toBeLessThan(0.5)
    }
  })
  test('a start at zero and a start at rest get away too', () => {
    const ramp = integrate((_, __, dy) => { dy[0] = 2 }, span({ from: 10, to: 20, start: [0] }))
    expect(ramp.last.y[0]).toBeCloseTo(20, 10)
    expect(ramp.steps).toBeLessThan(20)
    const waking = integrate((t, _, dy) => { dy[0] = Math.sin(t) }, span({ start: [0] }))
    expect(waking.last.y[0]).toBeCloseTo(1 - Math.cos(3), 6)
    expect(waking.rejected).toBeLessThan(3)
  })
  test('is no longer than allowed', () => {
    const got = integrate(decay(1e-3), span({ longest: 0.01, to: 0.1 }))
    for (let i = 1; i < got.t.length; i++) expect(got.t[i]! - got.t[i - 1]!).toBeLessThanOrEqual(0.01 * 1.0002)
  })
})
describe('the length of steps', () => {
  test('is the same for one equation and for the same one five times over', () => {
    const one = integrate(decay(2), span()), five = integrate(decay(2), span({ start: [1, 1, 1, 1, 1] }))
    expect(five.steps).toBe(one.steps)
    expect(five.last.y[3]).toBeCloseTo(one.last.y[0]!, 14)
  })
  test('never grows more than fivefold at once', () => {
    const got = integrate(decay(50), span({ to: 40, absolute: 1e-3 }))
    for (let i = 2; i < got.t.length - 1; i++) expect((got.t[i]! - got.t[i - 1]!) / (got.t[i - 1]! - got.t[i - 2]!)).toBeLessThanOrEqual(5 * (1 + 1e-9))
  })
  test('a fifth of the step comes with 3125 times the accuracy, as the fifth order has it', () => {
    const steps = (relative: number) => integrate(decay(1), span({ relative, absolute: 0 })).steps
    const ratio = steps(1e-11) / steps(1e-6)
    expect(ratio).toBeGreaterThan(6)
    expect(ratio).toBeLessThan(14)
  })
  test('after a kink it is refused, shortened, and goes on', () => {
    const got = integrate((t, _, dy) => { dy[0] = t < 1 ? 0 : 1000 }, span({ start: [1], relative: 1e-8 }))
    expect(got.last.y[0]).toBeCloseTo(2001, 3)
    expect(got.rejected).toBeGreaterThan(0)
    expect(got.steps + got.rejected).toBeLessThan(150)
  })
})
describe('bounds on the work', () => {
  test('refused steps count too', () => {
    const got = integrate((t, _, dy) => { dy[0] = t < 1 ? 0 : 1e9 }, span({ start: [1], relative: 1e-10, maxSteps: 25 }))
    expect(got.ended).toBe('too many steps')
    expect(got.steps + got.rejected).toBe(25)
  })
  test('one component without a rate is enough to refuse', () => {
    expect(() => integrate((_, __, dy) => { dy[0] = 1; dy[1] = NaN }, span({ start: [1, 1] }))).toThrow('no value at the start')
  })
})
describe('an event', () => {
  test('of time alone is met at its time, not at the end of a step', () => {
    const got = integrate(decay(1), span({ from: 2, to: 9, until: (t) => t - 4.321 }))
    expect(got.ended).toBe('at the event')
    expect(got.last.t).toBeCloseTo(4.321, 9)
    expect(got.last.y[0]).toBeCloseTo(Math.exp(-2.321), 6)
  })
  test('keeps its own values when others are asked for in the same step', () => {
    const at = Array.from({ length: 200 }, (_, i) => 2 + i * 0.015)
    const got = integrate(decay(1), span({ from: 2, to: 9, at, until: (t) => t - 4.321 }))
    expect(got.last.y[0]).toBeCloseTo(Math.exp(-2.321), 6)
    expect(got.t).toEqual(at.filter((t) => t <= 4.321))
    got.y.forEach((row, i) => expect(row[0]).toBeCloseTo(Math.exp(2 - at[i]!), 6))
  })
  test('that falls on the end is met there', () => {
    const got = integrate((_, __, dy) => { dy[0] = 1 }, span({ from: 0, to: 1, start: [0], until: (t) => t - 1 }))
    expect(got.ended).toBe('at the event')
    expect(got.last.t).toBe(1)
  })
})

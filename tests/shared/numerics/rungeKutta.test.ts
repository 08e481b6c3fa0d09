import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { integrate } from '@trochoid/compute/numerics/rungeKutta.ts'
import { dormandPrinceStep, stagesFor, within, type Rates } from '@trochoid/compute/numerics/dormandPrince.ts'

const growth: Rates = (_, y, dy) => { dy[0] = y[0]! }
const tight = { relative: 1e-11, absolute: 1e-11 }

describe('one step of the pair', () => {
  // Values of both orders for y' = y, y(0) = 1, h = 0.1, from the tableau in Hairer, Nørsett, Wanner I, table II.5.2.
  test('gives the published values of both orders', () => {
    const stages = stagesFor(1)
    stages.k[0]![0] = 1
    dormandPrinceStep(growth, 0, Float64Array.of(1), 0.1, stages)
    expect(Math.abs(stages.y[0]! - 1.1051709183333334)).toBeLessThan(1e-15)
    expect(Math.abs(stages.y[0]! - stages.error[0]! - 1.1051709260958333)).toBeLessThan(1e-15)
    expect(stages.k[6]![0]).toBe(stages.y[0])
  })
  test('inside the step it runs from start to end with the rates of both', () => {
    const stages = stagesFor(1), y = Float64Array.of(1), out = new Float64Array(1)
    stages.k[0]![0] = 1
    dormandPrinceStep(growth, 0, y, 0.1, stages)
    const value = (part: number): number => { within(part, y, 0.1, stages, out); return out[0]! }
    expect(value(0)).toBe(1)
    expect(value(1)).toBeCloseTo(stages.y[0]!, 15)
    expect(value(0.5)).toBeCloseTo(Math.exp(0.05), 8)
    expect((value(1e-6) - value(0)) / 1e-7).toBeCloseTo(1, 5)
    expect((value(1) - value(1 - 1e-6)) / 1e-7).toBeCloseTo(stages.y[0]!, 5)
  })
  test('inside the step it is of fourth order: y = t^4 is met at every part', () => {
    const stages = stagesFor(1), y = Float64Array.of(1), out = new Float64Array(1)
    stages.k[0]![0] = 4
    dormandPrinceStep((t, _, dy) => { dy[0] = 4 * t ** 3 }, 1, y, 0.7, stages)
    for (const part of [0.1, 0.37, 0.5, 0.8]) {
      within(part, y, 0.7, stages, out)
      expect(out[0]).toBeCloseTo((1 + 0.7 * part) ** 4, 12)
    }
  })
  test('stages stand at their times: y = t^4 is integrated exactly', () => {
    const stages = stagesFor(1)
    stages.k[0]![0] = 4
    dormandPrinceStep((t, _, dy) => { dy[0] = 4 * t ** 3 }, 1, Float64Array.of(1), 0.7, stages)
    expect(stages.y[0]).toBeCloseTo(1.7 ** 4, 13)
  })
})

describe('published problems', () => {
  // Hairer, Nørsett, Wanner I, II.0: a closed orbit of the restricted three-body problem.
  test('the Arenstorf orbit closes', () => {
    const mu = 0.012277471, other = 1 - mu
    const orbit: Rates = (_, y, dy) => {
      const d1 = ((y[0]! + mu) ** 2 + y[1]! ** 2) ** 1.5
      const d2 = ((y[0]! - other) ** 2 + y[1]! ** 2) ** 1.5
      dy[0] = y[2]!
      dy[1] = y[3]!
      dy[2] = y[0]! + 2 * y[3]! - (other * (y[0]! + mu)) / d1 - (mu * (y[0]! - other)) / d2
      dy[3] = y[1]! - 2 * y[2]! - (other * y[1]!) / d1 - (mu * y[1]!) / d2
    }
    const { last } = integrate(orbit, { from: 0, to: 17.065216560157964, start: [0.994, 0, 0, -2.00158510637908252240537862224], relative: 1e-13, absolute: 1e-13 })
    expect(Math.abs(last.y[0]! - 0.994)).toBeLessThan(1e-6)
    expect(Math.abs(last.y[1]!)).toBeLessThan(1e-6)
    expect(Math.abs(last.y[2]!)).toBeLessThan(1e-4)
    expect(Math.abs(last.y[3]! + 2.001585106379)).toBeLessThan(1e-4)
  })
  // A = 1, B = 3; end values computed with scipy 1.10.1, DOP853, relative tolerance 1e-13.
  test('the Brusselator at t = 20', () => {
    const f: Rates = (_, y, dy) => { dy[0] = 1 + y[0]! ** 2 * y[1]! - 4 * y[0]!; dy[1] = 3 * y[0]! - y[0]! ** 2 * y[1]! }
    const { last, steps } = integrate(f, { from: 0, to: 20, start: [1.5, 3], relative: 1e-12, absolute: 1e-12 })
    expect(last.y[0]).toBeCloseTo(0.4986370712683, 9)
    expect(last.y[1]).toBeCloseTo(4.596780349452, 8)
    expect(steps).toBeLessThan(3000)
    const loose = integrate(f, { from: 0, to: 20, start: [1.5, 3], relative: 1e-4, absolute: 1e-4 })
    expect(loose.last.y[0]).toBeCloseTo(0.49864, 2)
    expect(loose.steps).toBeLessThan(150)
    expect(loose.rejected).toBeGreaterThan(0)
  })
  // Robertson's stiff problem, at t = 0.4: .98517211386, 3.386395379e-5, .01479402219 (Hairer, Wanner II, IV.10).
  test('Robertson to t = 0.4, at the cost of many steps', () => {
    const f: Rates = (_, y, dy) => {
      const slow = 0.04 * y[0]!, back = 1e4 * y[1]! * y[2]!, fast = 3e7 * y[1]! ** 2
      dy[0] = back - slow; dy[1] = slow - back - fast; dy[2] = fast
    }
    const { last } = integrate(f, { from: 0, to: 0.4, start: [1, 0, 0], relative: 1e-9, absolute: [1e-10, 1e-14, 1e-10] })
    expect(last.y[0]).toBeCloseTo(0.98517211386, 8)
    expect(last.y[1]! * 1e5).toBeCloseTo(3.386395379, 5)
    expect(last.y[2]).toBeCloseTo(0.01479402219, 8)
    expect(last.y[0]! + last.y[1]! + last.y[2]!).toBeCloseTo(1, 12)
  })
  // Incropera et al., 6th ed., example 5.3: an aluminium panel heated in an oven with convection and radiation until 150 °C,
  // held 300 s, cooled to 37 °C. The book prints 124 s and 989 s; scipy's DOP853 gives 123.075 s and 986.33 s.
  test('the panel of Incropera 5.3, by events', () => {
    const capacity = 2770 * 875 * 1.5e-3, sigma = 5.67e-8
    const rates = (h: number, air: number): Rates => (_, y, dy) => { dy[0] = -(h * (y[0]! - air) + 0.8 * sigma * (y[0]! ** 4 - air ** 4)) / capacity }
    const warm = integrate(rates(40, 448), { from: 0, to: 1000, start: [298], ...tight, until: (_, y) => y[0]! - 423 })
    expect(warm.ended).toBe('at the event')
    expect(warm.last.t).toBeCloseTo(123.075, 2)
    const held = integrate(rates(40, 448), { from: warm.last.t, to: warm.last.t + 300, start: warm.last.y, ...tight })
    const cool = integrate(rates(10, 298), { from: held.last.t, to: 2000, start: held.last.y, ...tight, until: (_, y) => y[0]! - 310 })
    expect(cool.last.t).toBeCloseTo(986.330, 2)
    expect(Math.abs(cool.last.t / 989 - 1)).toBeLessThan(0.003)
  })
})

describe('what a session asks of it', () => {
  test('an exponential to its tolerance, and tighter asked is better got', () => {
    const miss = (relative: number) => Math.abs(integrate(growth, { from: 0, to: 3, start: [1], relative, absolute: 0 }).last.y[0]! / Math.exp(3) - 1)
    expect(miss(1e-4)).toBeLessThan(1e-3)
    expect(miss(1e-8)).toBeLessThan(1e-7)
    expect(miss(1e-12)).toBeLessThan(1e-11)
    expect(miss(1e-8)).toBeLessThan(miss(1e-4))
  })
  test('gives values at the times asked, start and end among them', () => {
    const at = [0, 0.1, 0.5, 1.25, 2]
    const got = integrate(growth, { from: 0, to: 2, start: [1], relative: 1e-9, absolute: 1e-9, at })
    expect(got.t).toEqual(at)
    got.y.forEach((row, i) => expect(row[0]).toBeCloseTo(Math.exp(at[i]!), 6))
  })
  test('without times asked it gives every step, in order', () => {
    const got = integrate(growth, { from: 1, to: 2, start: [1], relative: 1e-6, absolute: 1e-6 })
    expect(got.t.length).toBe(got.steps + 1)
    expect(got.t[0]).toBe(1)
    expect(got.t.at(-1)).toBe(2)
    for (let i = 1; i < got.t.length; i++) expect(got.t[i]!).toBeGreaterThan(got.t[i - 1]!)
    expect(got.ended).toBe('at its end')
  })
  test('an event between steps is found, and what was asked after it is not given', () => {
    const got = integrate(growth, { from: 0, to: 5, start: [1], relative: 1e-10, absolute: 1e-10, at: [0.5, 1, 2, 4], until: (_, y) => y[0]! - 5 })
    expect(got.ended).toBe('at the event')
    expect(got.last.t).toBeCloseTo(Math.log(5), 8)
    expect(got.last.y[0]).toBeCloseTo(5, 8)
    expect(got.t).toEqual([0.5, 1])
  })
  test('an event downwards is found too, and steps end at it', () => {
    const got = integrate((_, y, dy) => { dy[0] = -y[0]! }, { from: 0, to: 5, start: [1], relative: 1e-10, absolute: 1e-10, until: (_, y) => y[0]! - 0.2 })
    expect(got.last.t).toBeCloseTo(Math.log(5), 8)
    expect(got.t.at(-1)).toBe(got.last.t)
  })
  test('an event that stands at zero from the start does not end it', () => {
    expect(integrate(growth, { from: 0, to: 1, start: [1], relative: 1e-8, absolute: 1e-8, until: (_, y) => y[0]! - 1 }).ended).toBe('at its end')
  })
  test('no step is longer than allowed: a short pulse is not stepped over', () => {
    const pulse: Rates = (t, _, dy) => { dy[0] = t > 500 && t < 501 ? 1 : 0 }
    expect(integrate(pulse, { from: 0, to: 1000, start: [0], relative: 1e-6, absolute: 1e-6, longest: 0.5 }).last.y[0]).toBeCloseTo(1, 3)
  })
  test('stops and says so where there are too many steps', () => {
    const got = integrate(growth, { from: 0, to: 5, start: [1], relative: 1e-12, absolute: 1e-12, maxSteps: 10 })
    expect(got.ended).toBe('too many steps')
    expect(got.last.t).toBeLessThan(5)
  })
  test('a solution that runs away ends, and does not hang', () => {
    const got = integrate((_, y, dy) => { dy[0] = y[0]! ** 2 }, { from: 0, to: 2, start: [1], relative: 1e-8, absolute: 1e-8 })
    expect(got.ended).toBe('too many steps')
    expect(got.last.t).toBeCloseTo(1, 4)
  })
  test('refuses a span backwards and rates without value', () => {
    expect(() => integrate(growth, { from: 1, to: 1, start: [1], ...tight })).toThrow('after the start')
    expect(() => integrate((_, __, dy) => { dy[0] = NaN }, { from: 0, to: 1, start: [1], ...tight })).toThrow('no value at the start')
  })
  test('rest stays at rest', () => {
    const got = integrate((_, __, dy) => { dy[0] = 0 }, { from: 0, to: 100, start: [7], relative: 1e-6, absolute: 1e-6 })
    expect(got.last.y).toEqual([7])
    expect(got.steps).toBeLessThan(30)
  })
  test('cooling towards the air around is Newton’s law, whatever the numbers', () => {
    fc.assert(fc.property(fc.double({ min: 0.01, max: 2, noNaN: true }), fc.double({ min: 250, max: 320, noNaN: true }), fc.double({ min: 320, max: 420, noNaN: true }), (k, air, start) => {
      const { last } = integrate((_, y, dy) => { dy[0] = -k * (y[0]! - air) }, { from: 0, to: 10, start: [start], relative: 1e-9, absolute: 1e-7 })
      expect(last.y[0]).toBeCloseTo(air + (start - air) * Math.exp(-10 * k), 4)
    }), { numRuns: 30 })
  })
})

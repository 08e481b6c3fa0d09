import { describe, expect, test } from 'vitest'
import { newton, type NewtonOptions, type System } from '@trochoid/compute/numerics/newton.ts'

const options = (n: number, more: Partial<NewtonOptions> = {}): NewtonOptions => ({ scale: Array<number>(n).fill(1), lower: Array<number>(n).fill(-1e6), upper: Array<number>(n).fill(1e6), tolerance: 1e-10, maxSteps: 100, ...more })
/** Solves and counts how often the equations were asked. */
function counted(f: System, start: readonly number[], more: Partial<NewtonOptions> = {}) {
  let calls = 0
  const found = newton((x, out) => { calls++; f(x, out) }, start, options(start.length, more))
  return { ...found, calls }
}

describe('what it costs', () => {
  test('a linear system of n unknowns takes n + 2 values: the start, one for each difference, the answer', () => {
    for (const n of [1, 2, 4]) {
      const f: System = (x, out) => { for (let i = 0; i < n; i++) out[i] = 3 * x[i]! - (x[(i + 1) % n] ?? 0) - i }
      const found = counted(f, Array<number>(n).fill(9), { tolerance: 1e-5 })
      expect(found.steps).toBe(1)
      expect(found.calls).toBe(n + 2)
    }
  })
  // Newton on a well-behaved system doubles its digits, and Broyden's update spares it the differences between.
  test('a mildly curved system of eight takes one Jacobian and a few values', () => {
    const n = 8
    const f: System = (x, out) => { for (let i = 0; i < n; i++) out[i] = x[i]! + 0.2 * Math.sin(x[(i + 1) % n]! + i) - i / 4 }
    const found = counted(f, Array<number>(n).fill(1))
    expect(found.converged).toBe(true)
    expect(found.calls).toBeLessThan(1 + n + 9)
    expect(found.calls).toBe(1 + n + found.steps)
  })
  test('a single curved equation converges faster than in proportion: four more digits cost a step or two', () => {
    const steps = (tolerance: number) => counted((x, out) => { out[0] = Math.exp(x[0]!) - 7 }, [1.5], { tolerance }).steps
    expect(steps(1e-10) - steps(1e-6)).toBeLessThanOrEqual(1)
    expect(steps(1e-10)).toBeLessThanOrEqual(6)
  })
  test('Rosenbrock’s valley takes a score of steps, not a hundred', () => {
    const found = counted((x, out) => { out[0] = 10 * (x[1]! - x[0]! ** 2); out[1] = 1 - x[0]! }, [-1.2, 1])
    expect(found.steps).toBeLessThan(30)
    expect(found.calls).toBeLessThan(120)
  })
})
describe('a step that overshoots', () => {
  // From beyond 1.3917 the plain Newton iteration on the arc tangent runs away (Dennis, Schnabel, example 2.4.3 and exercise 2.10).
  test('is shortened until the arc tangent is solved from far away', () => {
    for (const start of [1.5, 3, 10, -20]) {
      const found = counted((x, out) => { out[0] = Math.atan(x[0]!) }, [start])
      expect(Math.abs(found.x[0]!)).toBeLessThan(1e-9)
      expect(found.steps).toBeLessThan(15)
    }
  })
  test('is shortened by the parabola: few tries where a tenth is right', () => {
    const found = counted((x, out) => { out[0] = Math.atan(20 * x[0]!) }, [1])
    expect(found.converged).toBe(true)
    expect(found.calls).toBeLessThan(40)
  })
  test('never makes the miss larger', () => {
    for (const maxSteps of [1, 2, 3, 4, 6, 8]) {
      const rest = (steps: number) => newton((x, out) => { out[0] = Math.atan(x[0]! - 2); out[1] = x[1]! ** 3 - x[0]! }, [9, -4], options(2, { maxSteps: steps })).residual
      expect(rest(maxSteps + 2)).toBeLessThanOrEqual(Math.max(rest(maxSteps), 1e-10) * Math.SQRT2)
    }
  })
})
describe('where Newton’s step does not exist', () => {
  test('two equal equations: the nearest point on their line is taken', () => {
    const found = counted((x, out) => { out[0] = x[0]! + x[1]! - 2; out[1] = x[0]! + x[1]! - 2 }, [0, 0], { tolerance: 1e-5 })
    expect(found.converged).toBe(true)
    expect(found.x[0]).toBeCloseTo(1, 4)
    expect(found.x[1]).toBeCloseTo(1, 4)
  })
  test('the nearest point where the two unknowns weigh differently', () => {
    const found = counted((x, out) => { out[0] = x[0]! + 3 * x[1]! - 10; out[1] = 2 * x[0]! + 6 * x[1]! - 20 }, [0, 0], { tolerance: 1e-4 })
    expect(found.x[0]).toBeCloseTo(1, 3)
    expect(found.x[1]).toBeCloseTo(3, 3)
  })
  test('equations that contradict each other end at the least squares of both, not converged', () => {
    const found = counted((x, out) => { out[0] = x[0]! + x[1]! - 1; out[1] = x[0]! + x[1]! - 3; out[2] = x[2]! - 4 }, [0, 0, 0])
    expect(found.converged).toBe(false)
    expect(found.x[0]! + found.x[1]!).toBeCloseTo(2, 3)
    expect(found.x[2]).toBeCloseTo(4, 3)
    expect(found.residual).toBeCloseTo(1, 3)
  })
})
describe('at a bound', () => {
  test('the others settle at the least squares that the bound leaves', () => {
    // x would be beyond 1. On x = 1 the sum (y/2 - 4)² + (y - 2.3)² is least at y = 3.44.
    const f: System = (x, out) => { out[0] = x[0]! - 5 + 0.5 * x[1]!; out[1] = x[1]! - 2 - 0.3 * x[0]! }
    const found = counted(f, [0.5, 0.5], { lower: [0, -10], upper: [1, 10] })
    expect(found.x[0]).toBe(1)
    expect(found.x[1]).toBeCloseTo(3.44, 4)
  })
  test('the same on the lower side', () => {
    const f: System = (x, out) => { out[0] = -x[0]! - 5 + 0.5 * x[1]!; out[1] = x[1]! - 2 + 0.3 * x[0]! }
    const found = counted(f, [-0.5, 0.5], { lower: [-1, -10], upper: [0, 10] })
    expect(found.x[0]).toBe(-1)
    expect(found.x[1]).toBeCloseTo(3.44, 4)
  })
  test('both held: the corner is the answer', () => {
    const found = counted((x, out) => { out[0] = x[0]! - 5; out[1] = x[1]! + 5 }, [0.2, 0.7], { lower: [0, 0], upper: [1, 1] })
    expect(found.x).toEqual([1, 0])
    expect(found.residual).toBe(5)
    expect(found.converged).toBe(false)
  })
  test('a start on a bound leaves it where the root lies inside', () => {
    for (const start of [0, 4]) {
      const found = counted((x, out) => { out[0] = (x[0]! - 1) * (x[0]! + 7) }, [start], { lower: [0], upper: [4] })
      expect(found.converged).toBe(true)
      expect(found.x[0]).toBeCloseTo(1, 9)
    }
  })
  test('nothing is asked outside the bounds', () => {
    const seen: number[] = []
    counted((x, out) => { seen.push(x[0]!); out[0] = x[0]! ** 3 - 0.2 }, [1], { lower: [-1], upper: [1] })
    counted((x, out) => { seen.push(x[0]!); out[0] = x[0]! ** 3 + 0.2 }, [-1], { lower: [-1], upper: [1] })
    expect(Math.max(...seen.map(Math.abs))).toBeLessThanOrEqual(1)
  })
})
describe('where there is no value on one side', () => {
  test('the difference is taken to the other', () => {
    expect(counted((x, out) => { out[0] = x[0]! > 2 ? NaN : x[0]! - 1 }, [2]).x[0]).toBeCloseTo(1, 6)
    expect(counted((x, out) => { out[0] = x[0]! < 2 ? NaN : x[0]! - 3 }, [2]).x[0]).toBeCloseTo(3, 6)
  })
})

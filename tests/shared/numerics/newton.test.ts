import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { newton, type System } from '@trochoid/compute/numerics/newton.ts'
import { solveLinear } from '@trochoid/compute/numerics/linear.ts'

const free = (n: number, tolerance = 1e-12) => ({ scale: Array<number>(n).fill(1), lower: Array<number>(n).fill(-1e6), upper: Array<number>(n).fill(1e6), tolerance, maxSteps: 200 })

// J. J. Moré, B. S. Garbow, K. E. Hillstrom, Testing Unconstrained Optimization Software, ACM TOMS 7 (1981): the systems,
// their standard starts and their roots.
describe('the published test systems', () => {
  test('Rosenbrock', () => {
    const f: System = (x, out) => { out[0] = 10 * (x[1]! - x[0]! ** 2); out[1] = 1 - x[0]! }
    const found = newton(f, [-1.2, 1], free(2))
    expect(found.converged).toBe(true)
    expect(found.x[0]).toBeCloseTo(1, 10)
    expect(found.x[1]).toBeCloseTo(1, 10)
  })
  test('Powell badly scaled, root (1.098e-5, 9.106)', () => {
    const f: System = (x, out) => { out[0] = 1e4 * x[0]! * x[1]! - 1; out[1] = Math.exp(-x[0]!) + Math.exp(-x[1]!) - 1.0001 }
    const found = newton(f, [0, 1], free(2, 1e-10))
    expect(found.converged).toBe(true)
    expect(found.x[0]).toBeCloseTo(1.098e-5, 8)
    expect(found.x[1]).toBeCloseTo(9.106, 3)
  })
  test('helical valley, root (1, 0, 0)', () => {
    const f: System = (x, out) => {
      const theta = Math.atan(x[1]! / x[0]!) / (2 * Math.PI) + (x[0]! < 0 ? 0.5 : 0)
      out[0] = 10 * (x[2]! - 10 * theta); out[1] = 10 * (Math.hypot(x[0]!, x[1]!) - 1); out[2] = x[2]!
    }
    const found = newton(f, [-1, 0, 0], free(3))
    expect(found.converged).toBe(true)
    expect(found.x[0]).toBeCloseTo(1, 10)
    expect(found.x[1]).toBeCloseTo(0, 10)
    expect(found.x[2]).toBeCloseTo(0, 10)
  })
  test('Powell singular: comes to the origin although the Jacobian is singular there', () => {
    const f: System = (x, out) => {
      out[0] = x[0]! + 10 * x[1]!; out[1] = Math.sqrt(5) * (x[2]! - x[3]!)
      out[2] = (x[1]! - 2 * x[2]!) ** 2; out[3] = Math.sqrt(10) * (x[0]! - x[3]!) ** 2
    }
    const found = newton(f, [3, -1, 0, 1], free(4, 1e-10))
    expect(found.converged).toBe(true)
    for (const x of found.x) expect(Math.abs(x)).toBeLessThan(1e-4)
  })
  test('Freudenstein and Roth from (6, 3) comes to (5, 4)', () => {
    const f: System = (x, out) => {
      out[0] = -13 + x[0]! + ((5 - x[1]!) * x[1]! - 2) * x[1]!
      out[1] = -29 + x[0]! + ((x[1]! + 1) * x[1]! - 14) * x[1]!
    }
    const found = newton(f, [6, 3], free(2))
    expect(found.x[0]).toBeCloseTo(5, 9)
    expect(found.x[1]).toBeCloseTo(4, 9)
  })
  test('Freudenstein and Roth from (0.5, -2) ends in the published local minimum and says it has not converged', () => {
    const f: System = (x, out) => {
      out[0] = -13 + x[0]! + ((5 - x[1]!) * x[1]! - 2) * x[1]!
      out[1] = -29 + x[0]! + ((x[1]! + 1) * x[1]! - 14) * x[1]!
    }
    const found = newton(f, [0.5, -2], free(2))
    expect(found.converged).toBe(false)
    expect(found.x[0]).toBeCloseTo(11.41, 1)
    expect(found.x[1]).toBeCloseTo(-0.8968, 2)
  })
})

describe('what the coupled solve needs of it', () => {
  test('a linear system takes one step and eight values at most', () => {
    let calls = 0
    const found = newton((x, out) => { calls++; out[0] = 2 * x[0]! + x[1]! - 3; out[1] = x[0]! - x[1]! }, [10, -7], free(2, 1e-6))
    expect(found.steps).toBe(1)
    expect(calls).toBeLessThanOrEqual(8)
    expect(found.x[0]).toBeCloseTo(1, 6)
  })
  test('a start at the root takes no step', () => {
    const found = newton((x, out) => { out[0] = x[0]! - 2 }, [2], free(1))
    expect(found).toEqual({ x: [2], residual: 0, converged: true, steps: 0 })
  })
  test('stays inside its bounds and finds a root on one', () => {
    const seen: number[] = []
    const found = newton((x, out) => { seen.push(x[0]!, x[1]!); out[0] = x[0]! * x[0]! - x[1]!; out[1] = x[1]! - 0 }, [3, 4], { scale: [1, 1], lower: [0, 0], upper: [3, 4], tolerance: 1e-9, maxSteps: 100 })
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...seen)).toBeLessThanOrEqual(4)
    expect(found.converged).toBe(true)
  })
  test('a root outside the bounds: stops at the bound, not converged, and the free unknown is settled', () => {
    const found = newton((x, out) => { out[0] = x[0]! - 5; out[1] = x[1]! - 2 }, [0.5, 0.5], { scale: [1, 1], lower: [0, 0], upper: [1, 10], tolerance: 1e-9 })
    expect(found.converged).toBe(false)
    expect(found.x[0]).toBe(1)
    expect(found.x[1]).toBeCloseTo(2, 8)
    expect(found.residual).toBeCloseTo(4, 8)
  })
  test('a start outside the bounds is brought inside first', () => {
    const found = newton((x, out) => { out[0] = x[0]! - 0.5 }, [50], { scale: [1], lower: [0], upper: [1], tolerance: 1e-9 })
    expect(found.x[0]).toBeCloseTo(0.5, 8)
  })
  test('where the equations have no value it shortens the step', () => {
    const found = newton((x, out) => { out[0] = Math.log(x[0]!) - 1 }, [8], free(1))
    expect(found.x[0]).toBeCloseTo(Math.E, 9)
  })
  test('throws where there is no value at the start', () => {
    expect(() => newton((_, out) => { out[0] = NaN }, [1], free(1))).toThrow('no value at the start')
  })
  test('says so when its steps run out', () => {
    const found = newton((x, out) => { out[0] = Math.exp(x[0]!) - 1e9 }, [0], { ...free(1), maxSteps: 2 })
    expect(found.steps).toBe(2)
    expect(found.converged).toBe(false)
  })
  test('scale does not change the answer, only the path', () => {
    const f: System = (x, out) => { out[0] = x[0]! * 1e-5 - 1.2 + 0.1 * Math.sin(x[1]! / 300); out[1] = x[1]! / 300 - 1 - 0.2 * x[0]! * 1e-5 }
    const bounds = { lower: [1e4, 200], upper: [1e6, 900], tolerance: 1e-11 }
    const a = newton(f, [1e5, 300], { ...bounds, scale: [1e5, 300] })
    const b = newton(f, [1e5, 300], { ...bounds, scale: [1, 1] })
    expect(a.converged && b.converged).toBe(true)
    expect(a.x[0]! / b.x[0]!).toBeCloseTo(1, 9)
    expect(a.x[1]! / b.x[1]!).toBeCloseTo(1, 9)
  })
  test('whatever smooth system of three it is given, a found root is a root', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 }), (c) => {
      const f: System = (x, out) => {
        for (let i = 0; i < 3; i++) out[i] = 4 * x[i]! + c[i]! * Math.sin(x[0]!) + c[3 + i]! * x[1]! + c[6 + i]! * Math.cos(x[2]!) + c[9 + i]!
      }
      const found = newton(f, [0, 0, 0], free(3, 1e-10))
      expect(found.converged).toBe(true)
      const out = new Float64Array(3)
      f(Float64Array.from(found.x), out)
      expect(Math.max(...out.map(Math.abs))).toBe(found.residual)
      expect(found.residual).toBeLessThanOrEqual(1e-10)
    }), { numRuns: 100 })
  })
})

describe('the small linear solve', () => {
  test('exchanges rows where a pivot is zero', () => {
    const b = Float64Array.of(2, 3)
    expect(solveLinear(Float64Array.of(0, 1, 1, 0), b, 2)).toBe(true)
    expect([...b]).toEqual([3, 2])
  })
  test('refuses a singular matrix and one without numbers', () => {
    expect(solveLinear(Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 2), 2)).toBe(false)
    expect(solveLinear(Float64Array.of(NaN, 1, 1, 1), Float64Array.of(1, 2), 2)).toBe(false)
  })
  // Inverse of the Hilbert matrix of order 4, whose whole-number entries are published (Knuth, The Art of Computer
  // Programming 1, 1.2.3 exercise 45): first column 16, -120, 240, -140.
  test('Hilbert matrix of order 4', () => {
    const a = new Float64Array(16)
    for (let i = 0; i < 4; i++) for (let j = 0; j < 4; j++) a[i * 4 + j] = 1 / (i + j + 1)
    const b = Float64Array.of(1, 0, 0, 0)
    expect(solveLinear(a, b, 4)).toBe(true)
    for (const [i, v] of [16, -120, 240, -140].entries()) expect(b[i]).toBeCloseTo(v, 8)
  })
})

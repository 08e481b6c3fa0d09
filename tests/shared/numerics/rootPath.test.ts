import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bracketedRoot } from '@trochoid/compute/numerics/root.ts'
import { scanRoots } from '@trochoid/compute/numerics/scan.ts'

/** Looks for a root and keeps every place asked. */
function watched(f: (x: number) => number, a: number, b: number, tolerance: number) {
  const asked: number[] = []
  const found = bracketedRoot((x) => { asked.push(x); return f(x) }, a, b, tolerance)
  return { ...found, asked }
}

describe('steps towards a root', () => {
  // Inverse quadratic interpolation is exact where x is a quadratic in f. Of a square root near the upper end the secant's point lies
  // on that end's side, so that three values stand and the next point is the root.
  test('a square root is met at the second point inside the bracket', () => {
    for (const [a, b, root] of [[0.5, 4, 3], [1, 9, 7], [9, 1, 7], [0.2, 2, 1.5], [4, 9, 8]] as const) {
      const { x, asked } = watched((t) => Math.sqrt(t) - Math.sqrt(root), a, b, 1e-9)
      expect(Math.abs(asked[3]! - root)).toBeLessThan(1e-12)
      expect(Math.abs(x - root)).toBeLessThan(1e-12)
      expect(asked.length).toBeLessThanOrEqual(5)
    }
  })
  test('a straight line is met at the first, wherever the bracket lies', () => {
    for (const [a, b] of [[-1, 1], [1, -1], [-4, 4], [-10, 1], [0.2, 5]] as const) {
      const { asked } = watched((x) => 3 * (x - 0.3), a, b, 1e-9)
      expect(Math.abs(asked[2]! - 0.3)).toBeLessThan(1e-12)
      expect(asked.length).toBeLessThanOrEqual(4)
    }
  })
  // Brent (1973), 4.2: superlinear of order 1.618 at least on a smooth function.
  test('smooth functions take few values', () => {
    const smooth: readonly (readonly [(x: number) => number, number, number])[] = [
      [(x) => x ** 3 - 2 * x - 5, 2, 3], [(x) => Math.cos(x) - x, 0, 1], [(x) => Math.exp(x) - 2, 0, 2], [(x) => Math.log(x), 0.5, 3],
      [(x) => Math.atan(x - 0.4), -3, 3], [(x) => x ** 5 - 0.5, 0, 1.2], [(x) => 1 / x - 0.7, 0.5, 4],
    ]
    for (const [f, a, b] of smooth) {
      // Halving takes forty.
      expect(watched(f, a, b, 1e-12).asked.length).toBeLessThanOrEqual(13)
      expect(watched((x) => -f(-x), -a, -b, 1e-12).asked.length).toBe(watched(f, a, b, 1e-12).asked.length)
    }
    expect(smooth.reduce((sum, [f, a, b]) => sum + watched(f, a, b, 1e-12).asked.length, 0) / smooth.length).toBeLessThan(10)
  })
  test('of all it asked, it gives back the one with the least left over', () => {
    fc.assert(fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.double({ min: 0.3, max: 4, noNaN: true }), fc.constantFrom(1e-2, 1e-4, 1e-9), (root, bend, tolerance) => {
      const f = (x: number): number => Math.expm1(bend * (x - root))
      const { residual, asked, x } = watched(f, -4, 4, tolerance)
      expect(Math.abs(residual)).toBe(Math.min(...asked.map((p) => Math.abs(f(p)))))
      expect(f(x)).toBe(residual)
    }))
  })
  test('a jump is enclosed within the tolerance asked', () => {
    for (let at = 0.013; at < 1; at += 0.037) for (const tolerance of [0.05, 1e-3]) {
      expect(Math.abs(bracketedRoot((x) => (x < at ? -1 : 1), 0, 1, tolerance).x - at)).toBeLessThanOrEqual(tolerance)
    }
  })
  test('a jump costs no more than three halvings would for each', () => {
    const { asked } = watched((x) => (x < 0.123 ? -1 : 1e6), -1, 1, 1e-6)
    expect(asked.length).toBeLessThan(3 * Math.log2(2e6))
  })
  test('a step never ends at one that has no end: after 200 it says what is left', () => {
    const found = bracketedRoot((x) => (x < 1 / 3 ? -1 : 1), -1e300, 1e300, 0)
    expect(found.steps).toBeLessThanOrEqual(200)
    expect(Math.abs(found.residual)).toBe(1)
  })
  test('a zero met on the way ends the search', () => {
    const { asked, x } = watched((t) => (t < 0.5 ? -1 : t > 0.5 ? 1 : 0), 0, 1, 1e-9)
    expect(x).toBe(0.5)
    expect(asked).toEqual([0, 1, 0.5])
  })
})
describe('scanning a range', () => {
  test('asks at even places, wherever the range lies', () => {
    for (const [low, high] of [[1, 3], [-3, 3], [-5, -2]] as const) {
      const asked: number[] = []
      scanRoots((x) => { asked.push(x); return 1 }, low, high, 5)
      asked.forEach((x, i) => expect(x).toBeCloseTo(low + ((high - low) * i) / 4, 14))
      expect(asked.length).toBe(5)
    }
  })
  test('a root between is closed in on without asking for ever, in a range around zero too', () => {
    let calls = 0
    const { roots } = scanRoots((x) => { calls++; return x < 0.111 ? -1e-3 : x - 0.111 }, -3, 3, 3)
    expect(calls).toBeLessThan(200)
    expect(roots.length).toBeLessThanOrEqual(1)
  })
  test('a jump from little to much is a jump all the same, either way round', () => {
    for (const [before, after] of [[-0.01, 1000], [-1000, 0.01], [0.01, -1000]] as const) {
      const { roots, jumps } = scanRoots((x) => (x < 0.7 ? before : after), 0, 1, 9)
      expect(roots).toEqual([])
      expect(jumps[0]).toBeCloseTo(0.7, 9)
    }
  })
  test('as steep as a root may be, it stays one', () => {
    for (const at of [0.37, 0.61, 0.8123]) for (const steep of [1e8, 1e9]) {
      const { roots, jumps } = scanRoots((x) => Math.tanh(steep * (x - at)), 0, 1)
      expect(jumps).toEqual([])
      expect(roots[0]!.x).toBeCloseTo(at, 11)
    }
  })
})

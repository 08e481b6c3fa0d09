import { describe, expect, test } from 'vitest'
import { scanRoots } from '@trochoid/compute/numerics/scan.ts'

describe('every root in a range', () => {
  // Zeros of the Bessel function J0 (Abramowitz and Stegun, table 9.5; confirmed with scipy 1.10.1), here by its integral.
  test('zeros of J0: 2.4048255577, 5.5200781103, 8.6537279129, 11.7915344390', () => {
    const j0 = (x: number): number => {
      const n = 64
      let sum = 0
      for (let i = 0; i < n; i++) sum += Math.cos(x * Math.sin((Math.PI * (i + 0.5)) / n))
      return sum / n
    }
    const { roots, jumps, gaps } = scanRoots(j0, 0, 14)
    expect(roots.map((r) => Number(r.x.toFixed(10)))).toEqual([2.4048255577, 5.5200781103, 8.6537279129, 11.791534439])
    expect(jumps).toEqual([])
    expect(gaps).toBe(false)
  })
  test('the three roots of a cubic, ends and scanned points among them, each once', () => {
    const { roots } = scanRoots((x) => x * (x - 1) * (x - 4), 0, 4, 65)
    expect(roots.map((r) => r.x)).toEqual([0, 1, 4])
    expect(roots.every((r) => r.residual === 0)).toBe(true)
  })
  test('none where there is none', () => expect(scanRoots((x) => x * x + 1, -3, 3)).toEqual({ roots: [], jumps: [], gaps: false }))
  test('roots closer than a spacing may be missed, as it says, and more points find them', () => {
    const f = (x: number) => (x - 0.501) * (x - 0.503)
    expect(scanRoots(f, 0, 1, 65).roots.length).toBe(0)
    expect(scanRoots(f, 0, 1, 2001).roots.length).toBe(2)
  })
})
describe('what is no root', () => {
  test('a pole and a step are jumps', () => {
    const pole = scanRoots((x) => 1 / (x - 0.3), 0, 1)
    expect(pole.roots).toEqual([])
    expect(pole.jumps[0]).toBeCloseTo(0.3, 9)
    const step = scanRoots((x) => (x < 0.7 ? -3 : 5), 0, 1)
    expect(step.roots).toEqual([])
    expect(step.jumps.length).toBe(1)
    expect(step.jumps[0]).toBeCloseTo(0.7, 9)
  })
  test('a steep root is still a root', () => {
    const { roots, jumps } = scanRoots((x) => Math.tanh(1e6 * (x - 0.37)), 0, 1)
    expect(jumps).toEqual([])
    expect(roots[0]!.x).toBeCloseTo(0.37, 9)
  })
  test('where there is no value it passes over, says so, and finds what lies beyond', () => {
    const { roots, gaps } = scanRoots((x) => (x < 1 ? NaN : x - 1.5), 0, 2)
    expect(gaps).toBe(true)
    expect(roots.map((r) => r.x)).toEqual([1.5])
    expect(scanRoots((x) => (x > 1 ? NaN : x - 0.5), 0, 2).gaps).toBe(true)
  })
  test('a hole met while closing in is a gap, not a root', () => {
    const { roots, gaps } = scanRoots((x) => (Math.abs(x - 0.501) < 0.004 ? NaN : x - 0.501), 0, 1)
    expect(roots).toEqual([])
    expect(gaps).toBe(true)
  })
  test('small functions keep their roots: what is left over is weighed against the ends', () => {
    expect(scanRoots((x) => 1e-12 * (x - 0.4), 0, 1).roots.length).toBe(1)
  })
})
test('the range’s own ends are asked for exactly', () => {
  const asked: number[] = []
  scanRoots((x) => { asked.push(x); return 1 }, 0.1, 0.7, 7)
  expect(asked[0]).toBe(0.1)
  expect(asked.at(-1)).toBe(0.7)
  expect(asked.length).toBe(7)
})

import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bracketedRoot } from '@trochoid/compute/numerics/root.ts'

type Reference = { readonly roots: readonly { readonly f: string; readonly a: number; readonly b: number; readonly x: number }[] }
const reference = JSON.parse(readFileSync(new URL('../../reference/cooling.json', import.meta.url), 'utf8')) as Reference
const functions: Readonly<Record<string, (x: number) => number>> = {
  'x^3 - 2x - 5': (x) => x ** 3 - 2 * x - 5,
  'cos x - x': (x) => Math.cos(x) - x,
  'x exp(x) - 1': (x) => x * Math.exp(x) - 1,
  'x - tan x': (x) => x - Math.tan(x),
  'exp(-x) - ln x': (x) => Math.exp(-x) - Math.log(x),
}

describe('against scipy’s brentq', () => {
  test.each(reference.roots.map((r) => [r.f, r] as const))('%s', (name, { a, b, x }) => {
    const found = bracketedRoot(functions[name]!, a, b, 1e-14)
    expect(Math.abs(found.x - x)).toBeLessThan(1e-13)
    expect(found.residual).toBe(functions[name]!(found.x))
    expect(found.steps).toBeLessThan(25)
  })
})

describe('published roots', () => {
  // Wallis’s equation, the classic of textbooks: 2.09455148154232659...
  test('Wallis’s cubic', () => expect(bracketedRoot((x) => x ** 3 - 2 * x - 5, 2, 3, 1e-15).x).toBeCloseTo(2.094551481542327, 14))
  // Dottie number, 0.739085133215160641655312...
  test('the fixed point of the cosine', () => expect(bracketedRoot((x) => Math.cos(x) - x, 0, 1, 1e-15).x).toBeCloseTo(0.7390851332151607, 14))
  // Brent (1973), 4.4: Wilkinson’s hard case for a secant method; halving must save it.
  test('a function almost flat over most of the bracket', () => {
    const found = bracketedRoot((x) => (x === 0 ? 0 : x * Math.exp(-1 / (x * x))), -1, 4, 1e-6)
    expect(Math.abs(found.residual)).toBeLessThan(1e-6)
    expect(found.steps).toBeLessThan(200)
  })
  test('a root of ninth order: found as well as it can be told', () => {
    const found = bracketedRoot((x) => (x - 1) ** 9, 0, 3, 1e-10)
    expect(Math.abs(found.x - 1)).toBeLessThan(1e-3)
    expect(found.steps).toBeLessThan(200)
  })
})

describe('what every caller relies on', () => {
  test('an end that is a root is given back at once', () => {
    expect(bracketedRoot((x) => x, 0, 1, 1e-9)).toEqual({ x: 0, residual: 0, steps: 0 })
    expect(bracketedRoot((x) => x - 1, 0, 1, 1e-9)).toEqual({ x: 1, residual: 0, steps: 0 })
  })
  test('refuses ends of one sign', () => {
    expect(() => bracketedRoot((x) => x * x + 1, -1, 1, 1e-9)).toThrow(RangeError)
    expect(() => bracketedRoot((x) => -x * x - 1, -1, 1, 1e-9)).toThrow('no change of sign')
  })
  test('takes values at the ends as given and does not ask for them again', () => {
    const asked: number[] = []
    bracketedRoot((x) => { asked.push(x); return x - 0.3 }, 0, 1, 1e-9, -0.3, 0.7)
    expect(asked).not.toContain(0)
    expect(asked).not.toContain(1)
  })
  test('a straight line takes two steps or three', () => {
    expect(bracketedRoot((x) => 2 * x - 0.7, 0, 1, 1e-12).steps).toBeLessThanOrEqual(3)
  })
  test('stays in the bracket and keeps its tolerance, whichever way the function runs and the ends stand', () => {
    fc.assert(fc.property(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: 0.1, max: 5, noNaN: true }), fc.boolean(), fc.boolean(), (x0, slope, up, swapped) => {
      const asked: number[] = []
      const f = (x: number) => { asked.push(x); return (up ? 1 : -1) * (slope * (x - x0) + (x - x0) ** 3 + Math.tanh(5 * (x - x0))) }
      const found = swapped ? bracketedRoot(f, 10, -10, 1e-9) : bracketedRoot(f, -10, 10, 1e-9)
      expect(Math.abs(found.x - x0)).toBeLessThan(1e-9)
      expect(Math.min(...asked)).toBeGreaterThanOrEqual(-10)
      expect(Math.max(...asked)).toBeLessThanOrEqual(10)
      expect(found.steps).toBeLessThan(60)
    }))
  })
  test('a jump is closed in on from both sides', () => {
    const found = bracketedRoot((x) => (x < Math.PI ? -1 : 2), 0, 10, 1e-9)
    expect(Math.abs(found.x - Math.PI)).toBeLessThan(1e-8)
    expect(Math.abs(found.residual)).toBeGreaterThanOrEqual(1)
  })
})

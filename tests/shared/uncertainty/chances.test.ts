import { describe, expect, test } from 'vitest'
import { field, type Field } from '@trochoid/compute/build/field.ts'
import { type Weighed } from '@trochoid/compute/build/margins.ts'
import { emptySheet, valueAt, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { quantity } from '@trochoid/compute/quantity/quantity.ts'
import { agrees, chancesOf } from '@trochoid/compute/uncertainty/chances.ts'
import { normalShare } from '@trochoid/compute/uncertainty/normalShare.ts'
import { normal95 } from '@trochoid/compute/uncertainty/spread.ts'
import { leftsOf, workOf, type Model, type Plan } from '@trochoid/compute/uncertainty/sampling.ts'

// Three numbers of which everything is known: what a linear link has left is normal, and what each contributes is its variance.
const number = quantity('A number', 'x', 'number', [-1000, 1000], 1)
const fields = new Map<string, Field>(['t.a', 't.b', 't.c'].map((path, i) => [path, field(path, number, [10, 2, 5][i]!)]))
const value = (sheet: Sheet, path: string): number => valueAt(sheet, fields.get(path)!) as number
const tolerances = { 't.a': { form: 'normal', half: normal95 * 3 }, 't.b': { form: 'rectangular', half: 2 * Math.sqrt(3) }, 't.c': { form: 'triangular', half: Math.sqrt(6) } } as const
type Lefts = (a: number, b: number, c: number) => Readonly<Record<string, number | null | 'fails'>>
const modelOf = (lefts: Lefts): Model => ({
  fields, speeds: () => [1, 2, 3],
  weigh: (sheet) => Object.entries(lefts(value(sheet, 't.a'), value(sheet, 't.b'), value(sheet, 't.c'))).map(([id, left]) => ({
    id, state: left === 'fails' ? 'short' : 'holds', left: left === 'fails' ? null : left, failed: left === 'fails' ? 'no solution' : null, tight: 1, speed: 1, margin: { id, title: id, over: 'sweep' },
  } as unknown as Weighed)),
})
const run = (lefts: Lefts, more: Partial<Plan> = {}) => {
  const model = modelOf(lefts)
  const work = workOf({ sheet: emptySheet(), thresholds: {}, tolerances, samples: 20_000, seed: 3, ...more }, model)
  const all = new Float64Array(work.items * work.weighed.length)
  for (const _ of leftsOf(work, model, 0, work.items, all)) { /* all of them */ }
  return chancesOf(work, all)
}
const one = (left: (a: number, b: number, c: number) => number | null | 'fails', more: Partial<Plan> = {}) => run((a, b, c) => ({ only: left(a, b, c) }), more)[0]!

describe('a link that is linear in its inputs', () => {
  // Standard uncertainties 3, 2 and 1: left 10 - 2 · 2 - 5 = 1 with variance 9 + 16 + 1.
  const c = one((a, b, c) => a - 2 * b - c)
  const u = Math.sqrt(26)
  test('has the first-order uncertainty and chance', () => {
    expect(c.firstOrder!.uncertainty).toBeCloseTo(u, 9)
    expect(c.firstOrder!.enough).toBeCloseTo(normalShare({ z: 1 / u }), 9)
    expect(c.firstOrder!.linear).toBe(true)
  })
  test('is sampled to the same, within the sampling error that it states', () => {
    const p = c.firstOrder!.enough
    expect(Math.abs(c.enough!.share - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / 20_000))
    expect(Math.abs(c.mean - 1)).toBeLessThan((4 * u) / Math.sqrt(20_000))
  })
  test('owes each input its share of the variance, and the way it moves it', () => {
    expect(c.firstOrder!.parts.map((p) => [p.input, p.up])).toEqual([['t.b', false], ['t.a', true], ['t.c', false]])
    expect(c.firstOrder!.parts.map((p) => p.share)).toEqual([16 / 26, 9 / 26, 1 / 26].map((x) => expect.closeTo(x, 9) as number))
    for (const [i, share] of [16 / 26, 9 / 26, 1 / 26].entries()) expect(Math.abs(c.parts[i]!.share - share)).toBeLessThan(0.04)
  })
})
test('a link that is far from linear says that the first-order sum is not to be trusted', () => {
  const square = one((a) => 200 - a * a)
  expect(square.firstOrder!.linear).toBe(false)
  // 200 - a² is above nothing for a below √200: exactly known, for a is normal about 10 with 3.
  const exactly = normalShare({ z: (Math.sqrt(200) - 10) / 3 }) - normalShare({ z: (-Math.sqrt(200) - 10) / 3 })
  expect(Math.abs(square.enough!.share - exactly)).toBeLessThan(4 * Math.sqrt((exactly * (1 - exactly)) / 20_000))
  expect(one((a) => (a - 10) ** 2).firstOrder!.uncertainty).toBeCloseTo(0, 9)
})
test('JCGM 101, 8.1: the first order of its mass example does not agree with sampling, its additive examples do', () => {
  expect(agrees(1.234, 0.0539, [1.0834, 1.3825])).toBe(false)
  expect(agrees(0, 2, [-3.92, 3.92])).toBe(true)
  expect(agrees(0, 10.1, [-17, 17])).toBe(true)
})
test('a sample without a solution of its own counts as short, one that cannot be told is left out and said', () => {
  const failing = one((a) => (a < 10 ? 'fails' : 1))
  expect(Math.abs(failing.enough!.share - 0.5)).toBeLessThan(0.02)
  expect(failing.firstOrder).toBeNull()
  const untold = one((a) => (a < 10 ? null : 1))
  expect(untold.enough!.share).toBe(1)
  expect(Math.abs(untold.known / 20_000 - 0.5)).toBeLessThan(0.02)
  expect(one(() => null)).toMatchObject({ known: 0, enough: null, reserve: null, parts: [] })
})
test('the reserve is asked for above where tight begins', () => {
  const c = one((a) => a - 9)
  expect(Math.abs(c.reserve!.share - 0.5)).toBeLessThan(0.02)
  expect(c.enough!.share).toBeGreaterThan(0.6)
})
test('the least likely comes first, what cannot be told last', () => {
  expect(run((a) => ({ sure: 1000 + a, unknown: null, doubtful: a - 12, fair: a - 8 })).map((c) => c.id)).toEqual(['doubtful', 'fair', 'sure', 'unknown'])
})
test('without any tolerance the answer is the build as it stands', () => {
  const none = Object.fromEntries(Object.keys(tolerances).map((id) => [id, { form: 'normal', half: 0 } as const]))
  expect(one((a) => a - 9, { tolerances: none, samples: 50 })).toMatchObject({ enough: { share: 1 }, mean: 1, interval: [1, 1], parts: [], firstOrder: { uncertainty: 0, enough: 1, linear: true } })
})
test('work that is split gives to the last digit what it gives whole', () => {
  const model = modelOf((a, b, c) => ({ x: a * b - c }))
  const work = workOf({ sheet: emptySheet(), thresholds: {}, tolerances, samples: 500, seed: 9 }, model)
  const part = (from: number, to: number): number[] => {
    const out = new Float64Array((to - from) * work.weighed.length)
    for (const _ of leftsOf(work, model, from, to, out)) { /* all */ }
    return [...out]
  }
  const whole = part(0, work.items)
  for (const cut of [1, 250, 499, 500, 501, work.items - 1]) expect([...part(0, cut), ...part(cut, work.items)]).toEqual(whole)
})

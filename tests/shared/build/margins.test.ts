import { describe, expect, test } from 'vitest'
import { field } from '@trochoid/compute/build/field.ts'
import { margin, type Margin } from '@trochoid/compute/build/margin.ts'
import { leftWords, sentence, weighMargins } from '@trochoid/compute/build/margins.ts'
import { type Point, type Solved } from '@trochoid/compute/build/point.ts'
import { pointValue } from '@trochoid/compute/build/pointValue.ts'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'
import { quantity } from '@trochoid/compute/quantity/quantity.ts'
import { degC, lPerH } from '@trochoid/compute/quantity/si.ts'

const flow = quantity('Test flow', 'Q', 'volumeFlow', [0, lPerH(500)], lPerH(5))
const heat = quantity('Test temperature', 'T', 'temperature', [degC(0), degC(200)], 2)
const asked = pointValue('t.asked', flow)
const given = field('t.given', flow, lPerH(171))
const warm = pointValue('t.warm', heat)
const low = pointValue('t.low', heat)
const high = pointValue('t.high', heat)
const limit = field('t.limit', heat, degC(110))
const base: Margin = {
  id: 'pump', title: 'Pump', theme: 'fuel', article: 'x', over: 'sweep', demand: asked, capacity: given, must: 'stay below', as: 'share', tight: 0.1,
  rests: [given], remedies: [], says: 'At {speed}: asks {demand}, gives {capacity}, {left}.', settle: 'Measure the flow.',
}
const point = (speed: number, values: Record<string, number>, more: Partial<Point> = {}): Point => ({ speed, kind: 'full', values, missing: {}, failed: {}, residuals: {}, ...more })
const solved = (...points: Point[]): Solved => ({ idle: point(90, {}), points, build: {}, missing: {}, failed: {} })
/** Thin spaces as common ones. */
const plain = (text: string) => text.replace(/[\u202f\u2009]/g, ' ')
const rpm = (n: number) => (n * Math.PI) / 30
const only = (m: Margin, s: Solved, sheet = emptySheet(), thresholds = {}) => weighMargins([m], s, sheet, thresholds)[0]!

describe('a margin', () => {
  test('finds the worst speed and says what is left of what is asked', () => {
    const w = only(base, solved(point(rpm(3000), { 't.asked': lPerH(80) }), point(rpm(7600), { 't.asked': lPerH(148) })))
    expect(w.left).toBeCloseTo(23 / 148, 12)
    expect(w.state).toBe('holds')
    expect(w.speed).toBeCloseTo(rpm(7600))
    expect(plain(sentence(w))).toBe('At 7600 rpm: asks 148 L/h, gives 171 L/h, 16 % left.')
  })
  test('is tight below its threshold, which the reader may move, and short below nothing', () => {
    const at = (x: number, thresholds = {}) => only(base, solved(point(1, { 't.asked': lPerH(x) })), emptySheet(), thresholds).state
    expect([at(150), at(160), at(180)]).toEqual(['holds', 'tight', 'short'])
    expect(at(150, { pump: 0.2 })).toBe('tight')
  })
  test('that must stay above is turned round', () => {
    const above = margin({ ...base, must: 'stay above' })
    expect(only(above, solved(point(1, { 't.asked': lPerH(180) }))).left).toBeCloseTo(9 / 171, 12)
    expect(only(above, solved(point(1, { 't.asked': lPerH(100) }))).state).toBe('short')
  })
  test('as a difference counts degrees', () => {
    const hot: Margin = { ...base, demand: warm, capacity: limit, as: 'difference', tight: 5, rests: [limit] }
    const w = only(hot, solved(point(1, { 't.warm': degC(98) })))
    expect(plain(leftWords(w))).toBe('12 K left')
    expect(plain(leftWords(only(hot, solved(point(1, { 't.warm': degC(113) })))))).toBe('3.0 K over')
  })
  test('with a band around its limit is tight, outside it is what the whole band is', () => {
    const banded: Margin = { ...base, demand: warm, capacity: limit, as: 'difference', tight: 5, rests: [limit], band: [low, high] }
    const at = (a: number, m: number, b: number) => only(banded, solved(point(1, { 't.warm': degC(m), 't.low': degC(a), 't.high': degC(b) }))).state
    expect([at(80, 90, 100), at(90, 105, 120), at(115, 120, 125), at(90, 100, 107)]).toEqual(['holds', 'tight', 'short', 'tight'])
  })
  test('without a number it rests on is not known and names it, even where the demand is small', () => {
    const w = only(base, solved(point(1, { 't.asked': 0 })), setEntry(emptySheet(), 't.given', { value: null }))
    expect([w.state, w.missing, w.left]).toEqual(['not known', ['t.given'], null])
    expect(sentence(w, 'metric', () => 'the pump’s flow')).toBe('Not known without the pump’s flow. Measure the flow.')
  })
  test('is short where the model finds that this very link has no solution', () => {
    const failed = { 't.asked': { link: 'pump', says: 'At 6000 rpm the pump has no point.' } }
    const w = only(base, solved(point(rpm(3000), { 't.asked': lPerH(80) }), point(rpm(6000), {}, { failed })))
    expect([w.state, w.speed]).toEqual(['short', rpm(6000)])
    expect(sentence(w)).toContain('has no point')
  })
  test('leaves a gap where another link has no solution', () => {
    const failed = { 't.asked': { link: 'choke', says: 'Beyond choke.' } }
    const w = only(base, solved(point(rpm(3000), { 't.asked': lPerH(80) }), point(rpm(6000), {}, { failed })))
    expect([w.state, w.gaps]).toEqual(['holds', [rpm(6000)]])
  })
  test('never reads better than its best', () => {
    expect(only({ ...base, best: 'tight' }, solved(point(1, { 't.asked': 1e-9 }))).state).toBe('tight')
  })
  test('knows the worst of the sources it rests on', () => {
    const from = (f: 'measured' | 'maker' | 'guess') => only(base, solved(point(1, { 't.asked': 0 })), setEntry(emptySheet(), 't.given', { value: 1, from: f })).from
    expect([from('measured'), from('maker'), from('guess')]).toEqual(['measured', 'maker', 'guess'])
  })
})

test('knock stands first, then short, tight, not known, holds; the worst of each first', () => {
  const knock: Margin = { ...base, id: 'knock', always: 'not known', rests: [] }
  const unknown: Margin = { ...base, id: 'unknown', rests: [field('t.none', flow, null)] }
  const variant = (id: string, share: number): Margin => ({ ...base, id, capacity: field(`t.${id}`, flow, lPerH(100) * share) })
  const all = [variant('holds', 2), unknown, variant('tight', 1.05), variant('short', 0.9), variant('shorter', 0.5), knock]
  const weighed = weighMargins(all, solved(point(1, { 't.asked': lPerH(100) })), emptySheet())
  expect(weighed.map((w) => w.id)).toEqual(['knock', 'shorter', 'short', 'tight', 'unknown', 'holds'])
})

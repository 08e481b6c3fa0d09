import { describe, expect, test } from 'vitest'
import { readMap, readValue } from '@trochoid/compute/calculation/inputs.ts'
import { readArithmetic } from '@trochoid/compute/quantity/arithmetic.ts'
import { curveOf, gradeOf, mapOf, quantity } from '@trochoid/compute/quantity/quantity.ts'
import { kind, width } from './box.ts'

const refused = (x: { ok: boolean; says?: string }): string => { expect(x.ok).toBe(false); return x.says! }

describe('single values', () => {
  test('numbers in SI, text with units, sums', () => {
    expect(readValue(2, width)).toEqual({ ok: true, value: 2 })
    expect(readValue('250 cm', width)).toMatchObject({ ok: true, value: 2.5 })
    expect(readValue('1 m + 50 cm', width, readArithmetic)).toMatchObject({ ok: true, value: 1.5 })
    expect(refused(readValue('1 m + 50 cm', width))).toContain('no sum')
    expect(refused(readValue(NaN, width))).not.toBe('')
    expect(refused(readValue(true, width))).toContain('text with a unit')
    expect(refused(readValue('2 bananas', width))).not.toBe('')
  })
  test('choices and grades', () => {
    expect(readValue('half', kind)).toEqual({ ok: true, value: 'half' })
    expect(refused(readValue('toString', kind))).toContain('whole, half')
    expect(refused(readValue(1, kind))).toContain('one of')
    expect(readValue('10W-40', gradeOf('Oil')).ok).toBe(true)
    expect(refused(readValue(40, gradeOf('Oil')))).toContain('oil grade')
  })
})
describe('curves', () => {
  const curve = curveOf('Line', width, quantity('Pull', 'F', 'force', [0, 100], 1))
  const given = (x: unknown, y: unknown) => readValue({ x, y }, curve)
  test('points in order are taken', () => expect(given([1, 2, 4], [5, 5, 9])).toEqual({ ok: true, value: { x: [1, 2, 4], y: [5, 5, 9] } }))
  test('anything else is refused with its place', () => {
    expect(refused(readValue(null, curve))).toContain('up to 200 points')
    expect(refused(given([1, 2], 'no'))).toContain('up to 200 points')
    expect(refused(given([1, NaN], [1, 2]))).toContain('up to 200 points')
    expect(refused(given(['1', 2], [1, 2]))).toContain('up to 200 points')
    expect(refused(given([1, 2, 3], [1, 2]))).toContain('has 3 values of Width and 2')
    expect(refused(given([1], [1]))).toContain('needs two or more')
    expect(refused(given([1, 2, 2], [1, 2, 3]))).toContain('the 2 and 3')
    expect(refused(given([1, 3, 2], [1, 2, 3]))).toContain('point 3 has a smaller')
    expect(given(Array.from({ length: 200 }, (_, i) => 1 + i / 100), Array<number>(200).fill(1)).ok).toBe(true)
    expect(given(Array.from({ length: 201 }, (_, i) => 1 + i / 100), Array<number>(201).fill(1)).ok).toBe(false)
  })
  test('a point that cannot be is refused', () => expect(refused(given([-2, 2], [1, 1]))).toContain('point 1'))
})
describe('maps', () => {
  const line = (speed: number, lift: number) => ({ speed, flow: [0.1, 0.2, 0.3], ratio: [1.6 + lift, 1.5 + lift, 1.2 + lift], efficiency: [0.6, 0.7, 0.6] })
  const map = (more: object = {}) => ({ name: 'Invented', referenceTemperature: 298, referencePressure: 1e5, lines: [line(5000, 0), line(9000, 0.5)], ...more })
  const with2 = (more: object) => readMap(map({ lines: [line(5000, 0), { ...line(9000, 0.5), ...more }] }), 'Map')
  test('one that is in order is taken', () => {
    expect(readMap(map(), 'Map')).toEqual({ ok: true, value: map() })
    expect(readValue(map(), mapOf('Map')).ok).toBe(true)
  })
  test('its frame', () => {
    for (const no of [null, 5, {}, map({ lines: 1 })]) expect(refused(readMap(no, 'Map'))).toContain('object with "lines"')
    for (const t of [undefined, 200, 400, '298']) expect(refused(readMap(map({ referenceTemperature: t }), 'Map'))).toContain('reference temperature')
    for (const p of [undefined, 5e4, 2e5]) expect(refused(readMap(map({ referencePressure: p }), 'Map'))).toContain('reference pressure')
    expect(refused(readMap(map({ lines: [line(5000, 0)] }), 'Map'))).toContain('has 1 speed lines')
    const many = (n: number) => Array.from({ length: n }, (_, i) => line(1000 + i, i * 0.01))
    expect(readMap(map({ lines: many(30) }), 'Map').ok).toBe(true)
    expect(refused(readMap(map({ lines: many(31) }), 'Map'))).toContain('it needs 2 to 30')
  })
  test('its lines', () => {
    for (const no of [{ flow: 1 }, { ratio: [1, 'a', 2] }, { efficiency: null }, { speed: '9' }]) expect(refused(with2(no))).toContain('line 2: needs speed')
    expect(refused(with2({ flow: [0.1, 0.2], ratio: [2, 1.9], efficiency: [0.6, 0.6] }))).toContain('three or more')
    expect(refused(with2({ ratio: [2, 1.9] }))).toContain('three or more')
    expect(refused(with2({ efficiency: [0.6, 0.6] }))).toContain('three or more')
    expect(refused(with2({ speed: 5000 }))).toContain('speeds must rise')
    expect(refused(readMap(map({ lines: [line(0, 0), line(1, 0.5)] }), 'Map'))).toContain('speeds must rise')
  })
  test('its points', () => {
    expect(refused(with2({ flow: [0.1, 0.2, 0.2] }))).toContain('point 3: flow must rise')
    expect(refused(with2({ ratio: [2.1, 2.16, 1.7] }))).toContain('point 2: pressure ratio must fall')
    expect(with2({ ratio: [2.1, 2.14, 1.71] }).ok).toBe(true)
    for (const r of [[8, 7, 6], [2.1, 2, 0.9]]) expect(refused(with2({ ratio: r }))).toContain('between 1 and 8')
    expect(readMap(map({ lines: [{ ...line(5000, 0), ratio: [1.2, 1.1, 1] }, line(9000, 0.5)] }), 'Map').ok).toBe(true)
    for (const e of [[0.1, 0.5, 0.5], [0.5, 1, 0.5]]) expect(refused(with2({ efficiency: e }))).toContain('between 0.1 and 1')
    for (const f of [[0, 0.2, 0.3], [0.1, 0.2, 3]]) expect(refused(with2({ flow: f }))).toContain('between 0 and 3')
  })
  test('lines that cross or touch where both are drawn', () => {
    expect(refused(with2({ ratio: [2.1, 1.8, 1.1] }))).toContain('crosses')
    expect(refused(with2({ ratio: [1.6, 1.6, 1.6] }))).toContain('crosses')
    expect(refused(with2({ flow: [0.15, 0.25, 0.35], ratio: [1.56, 1.56, 1.56].map((r, j) => r - j * 0.01 - 0.02) }))).toContain('crosses')
    expect(with2({ flow: [0.15, 0.25, 0.35], ratio: [1.56, 1.52, 1.5] }).ok).toBe(true)
    expect(with2({ flow: [0.31, 0.35, 0.4], ratio: [1.15, 1.1, 1.05] }).ok).toBe(true)
  })
})

describe('keys that do not belong', () => {
  const line = (speed: number, up: number) => ({ speed, flow: [0.1, 0.2, 0.3], ratio: [1.5 + up, 1.4 + up, 1.3 + up], efficiency: [0.6, 0.7, 0.6] })
  const map = (more: object = {}, of: object = {}) => readMap({ name: 'Invented', referenceTemperature: 298, referencePressure: 1e5, lines: [{ ...line(5000, 0), ...of }, line(9000, 0.5)], ...more }, 'Map')
  test('in a map, in a line and in a curve', () => {
    expect(map().ok).toBe(true)
    expect(refused(map({ wheel: 5 }))).toContain('no map has: wheel')
    expect(refused(map({}, { colour: 'red' }))).toContain('no line has: colour')
    expect(refused(map(JSON.parse('{"__proto__": 1}') as object))).toContain('no map has: __proto__')
    expect(refused(map({ name: { a: 1 } }))).toContain('a name')
    expect(refused(map({ name: 'x'.repeat(121) }))).toContain('120')
    expect(refused(map({ estimate: 'yes' }))).toContain('true or false')
    expect(refused(readValue({ x: [1, 2], y: [1, 2], z: [1, 2] }, curveOf('Curve', width, width)))).toContain('no curve has: z')
  })
})

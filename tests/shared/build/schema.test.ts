import { describe, expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { jsonSchema, readSheet } from '@trochoid/compute/build/schema.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'

const registry = await loadRegistry()
const fields = new Map([...registry.fields].map(([path, { field }]) => [path, field]))
const good = { ...emptySheet('Test'), entries: { 'fuel.primary.ratedFlow': { value: 1e-5, typed: '600 cc/min', from: 'maker', note: 'bench' } } }
const read = (x: unknown) => readSheet(typeof x === 'string' ? x : JSON.stringify(x), fields)

test('a good file is read as it was written', () => expect(read(good)).toEqual({ ok: true, sheet: good }))
test('what is unknown stays unknown', () => {
  const sheet = setEntry(emptySheet(), 'fuel.primary.ratedFlow', { value: null })
  expect(read(sheet)).toEqual({ ok: true, sheet })
})

const bad: [string, unknown, RegExp][] = [
  ['cut off', JSON.stringify(good).slice(0, 60), /cut off/],
  ['empty', '', /JSON/],
  ['a number', 5, /one object/],
  ['a list', [], /one object/],
  ['null', null, /one object/],
  ['another format', { ...good, format: 'something' }, /format/],
  ['a newer version', { ...good, version: 2 }, /newer handbook/],
  ['version as text', { ...good, version: '1' }, /./],
  ['an extra key', { ...good, evil: 1 }, /evil/],
  ['an extra key in an entry', { ...good, entries: { 'fuel.primary.ratedFlow': { value: 1e-5, run: 1 } } }, /run/],
  ['an unknown field', { ...good, entries: { 'no.such': { value: 1 } } }, /no such field/],
  ['a prototype key', JSON.stringify(good).replace('"fuel.primary.ratedFlow"', '"__proto__"'), /./],
  ['a constructor key', { ...good, entries: { constructor: { value: 1 } } }, /no such field/],
  ['a prototype key at the top', JSON.stringify(good).replace('"note":""', '"note":"","__proto__":{"x":1}'), /./],
  ['text for a number', { ...good, entries: { 'fuel.primary.ratedFlow': { value: '<b>1</b>' } } }, /number/],
  ['a huge number', { ...good, entries: { 'fuel.primary.ratedFlow': { value: 1e300 } } }, /thousand times/],
  ['an infinite number', JSON.stringify(good).replace('0.00001', '1e999'), /./],
  ['a negative flow', { ...good, entries: { 'fuel.primary.ratedFlow': { value: -1 } } }, /above zero/],
  ['a map whose top line turns without end', JSON.stringify({ ...good, entries: { 'boost.compressorMap': { value: smallMap } } }).replace(/"speed":[\d.]+(?=[^"]*"flow"[^{]*$)/, '"speed":1e999'), /far above/],
  ['a name too long', { ...good, name: 'x'.repeat(121) }, /./],
  ['a note too long', { ...good, note: 'x'.repeat(4001) }, /./],
  ['too deep', '['.repeat(10000), /deeper/],
  ['too large', `"${'x'.repeat(2_000_001)}"`, /MB/],
]
describe.each(bad)('a file with %s', (_, file, says) => {
  test('is refused whole, in words, at once', () => {
    const start = performance.now()
    const result = read(file)
    expect(performance.now() - start).toBeLessThan(100)
    expect(result.ok).toBe(false)
    if (!result.ok) expect(result.says).toMatch(says)
    expect(({} as Record<string, unknown>)['x']).toBeUndefined()
  })
})

test('the published schema names every field', () => {
  const schema = jsonSchema(fields, 'https://example.invalid/build.json') as { properties: { entries: { properties: object } } }
  expect(Object.keys(schema.properties.entries.properties).sort()).toEqual([...fields.keys()].sort())
})

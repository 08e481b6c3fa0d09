import { expect, test } from 'vitest'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { fieldValues } from '@trochoid/compute/build/fieldValues.ts'
import { readSheet } from '@trochoid/compute/build/schema.ts'
import { emptySheet } from '@trochoid/compute/build/sheet.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { faceSpread, outsideOf, wantedOf } from '@trochoid/compute/record/expected.ts'
import { groups, lineIds, measuredItems } from '@trochoid/compute/record/items.ts'
import { emptyRecord, writeLine } from '@trochoid/compute/record/record.ts'

const fields = fieldValues(builds.street)
test('every line has an id of its own, and every expected field exists', () => {
  const count = groups.reduce((n, g) => n + (g.measured?.length ?? 0) + (g.chosen?.length ?? 0) + (g.steps?.length ?? 0), 0)
  expect(lineIds.size).toBe(count)
  for (const { id, expected } of measuredItems) if (expected && 'field' in expected) expect(allFields.has(expected.field), id).toBe(true)
})
test('a clearance outside what the sheet expects is told, one inside is not', () => {
  const item = measuredItems.find((m) => m.id === 'rotor-bearing-front')!
  const { low, high } = wantedOf(item, fields)!
  expect(low).toBeCloseTo(50e-6, 9)
  expect(high).toBeCloseTo(70e-6, 9)
  const put = (value: number) => outsideOf(writeLine(emptyRecord, item.id, { value }), fields)
  expect(put(60e-6)).toEqual([])
  expect(put(high)).toEqual([])
  expect(put(80e-6)).toEqual([item])
})
test('where the sheet says nothing, nothing is outside', () => {
  expect(outsideOf(writeLine(emptyRecord, 'flywheel-nut', { value: 400 }), fields)).toEqual([])
})
test('the spread of a rotor’s faces', () => {
  const record = [['face-front-1', 7.8e5], ['face-front-2', 7.4e5], ['face-front-3', 7.9e5]] as const
  expect(faceSpread(record.reduce((r, [id, value]) => writeLine(r, id, { value }), emptyRecord), 'front')).toBeCloseTo(0.5e5, 6)
  expect(faceSpread(emptyRecord, 'rear')).toBeNull()
})
test('a line that is emptied goes', () => {
  const written = writeLine(emptyRecord, 'part-oil', { text: 'invented 10W-40', by: 'A', on: '2026-05-01' })
  expect(Object.keys(written.lines)).toEqual(['part-oil'])
  expect(writeLine(written, 'part-oil', { text: '' }).lines).toEqual({})
})
test('the record goes into the file and comes back; a foreign line or day is refused', () => {
  const record = writeLine(writeLine({ ...emptyRecord, notes: 'Cold morning' }, 'end-float', { value: 6e-5, typed: '0.06', by: 'A', on: '2026-05-01' }), 'start-cranked', { done: true })
  const sheet = { ...emptySheet('Mine'), record }
  expect(readSheet(JSON.stringify(sheet), allFields)).toEqual({ ok: true, sheet })
  const refused = (change: object) => readSheet(JSON.stringify({ ...sheet, record: { ...record, ...change } }), allFields).ok
  expect(refused({ lines: { nothing: { value: 1 } } })).toBe(false)
  expect(refused({ lines: { 'end-float': { on: 'yesterday' } } })).toBe(false)
  expect(refused({ lines: { 'end-float': { value: 'a' } } })).toBe(false)
  expect(refused({ notes: 'x'.repeat(30_000) })).toBe(false)
})

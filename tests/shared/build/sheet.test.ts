import fc from 'fast-check'
import { expect, test } from 'vitest'
import { field } from '@trochoid/compute/build/field.ts'
import { apply, difference, emptySheet, fromAt, patchOf, reverse, setEntry, valueAt, type Entry } from '@trochoid/compute/build/sheet.ts'
import { quantity } from '@trochoid/compute/quantity/quantity.ts'

const width = field('t.width', quantity('Sheet width', 'b', 'length', [0.01, 1], 0.001), 0.08)

test('an untouched field has its start value and is common practice', () => {
  expect(valueAt(emptySheet(), width)).toBe(0.08)
  expect(fromAt(emptySheet(), width)).toBe('common')
})
test('a field said to be unknown is not its start value', () => expect(valueAt(setEntry(emptySheet(), 't.width', { value: null }), width)).toBeNull())
test('setting one entry leaves the sheet before it as it was', () => {
  const before = emptySheet()
  const after = setEntry(before, 't.width', { value: 0.09, from: 'measured' })
  expect(before.entries).toEqual({})
  expect(valueAt(after, width)).toBe(0.09)
  expect(setEntry(after, 't.width', undefined)).toEqual(before)
})
const entries: fc.Arbitrary<Record<string, Entry>> = fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), fc.record({ value: fc.double({ noNaN: true, min: -1e9, max: 1e9 }) }))
test('the difference of two sheets leads from one to the other and, reversed, back', () => {
  fc.assert(fc.property(entries, entries, (a, b) => {
    const from = { ...emptySheet(), entries: a }
    const to = { ...emptySheet(), entries: b }
    const patches = difference(from, to)
    expect(apply(from, patches)).toEqual(to)
    expect(apply(to, reverse(patches))).toEqual(from)
  }))
})
test('a patch remembers what stood there', () => {
  const sheet = setEntry(emptySheet(), 'a', { value: 1 })
  const patch = patchOf(sheet, 'a', { value: 2 })
  expect(apply(apply(sheet, [patch]), reverse([patch]))).toEqual(sheet)
})

import { expect, test } from 'vitest'
import { emptySheet, setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { lineIds } from '@trochoid/compute/record/items.ts'
import { emptyRecord, writeLine } from '@trochoid/compute/record/record.ts'
import { changed, patched, reversed, stepped } from '../../src/state/steps.ts'

const mine = emptySheet('Mine')
const written: Sheet = { ...mine, record: writeLine({ ...emptyRecord, notes: 'Cold morning' }, 'end-float', { value: 6e-5, typed: '0.06', by: 'A', on: '2026-05-01' }) }
const ticked: Sheet = { ...written, record: writeLine(written.record!, 'start-oil-filled', { done: true, by: 'B' }) }

test('what is written into the record of a build is a change of it', () => {
  expect(patched(mine, changed(mine, written))).toEqual(written)
  expect(patched(written, changed(written, ticked))).toEqual(ticked)
  expect(changed(ticked, ticked)).toEqual([])
})
test('one line is one change, whatever else stands in the record', () => {
  expect(changed(written, ticked).map(({ path }) => path)).toEqual(['record/start-oil-filled'])
})
test('it is taken back and done again, fields beside it untouched', () => {
  const step = { kind: 'edit', id: 'a', patches: changed(written, ticked), at: 0 } as const
  const driven = setEntry(ticked, 'site.humidity', { value: 0.5 })
  const back = stepped({ chosen: 'a', own: { a: driven } }, reversed(step)).own['a']!
  expect(back).toEqual(setEntry(written, 'site.humidity', { value: 0.5 }))
  expect(stepped({ chosen: 'a', own: { a: back } }, step).own['a']).toEqual(driven)
})
test('a build without a record gets none by a change of a field', () => {
  expect(patched(mine, changed(mine, setEntry(mine, 'site.humidity', { value: 0.5 }))).record).toBeUndefined()
})
test('no line is called as the notes are', () => expect(lineIds.has('notes')).toBe(false))

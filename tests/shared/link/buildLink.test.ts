import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { emptySheet, setEntry, type Entry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { buildCode, readBuildCode } from '@trochoid/compute/link/buildLink.ts'
import { mark } from '@trochoid/compute/link/mark.ts'
import { linkUnits } from '@trochoid/compute/link/numbers.ts'
import { isQuantity, type CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import { unitsOf } from '@trochoid/compute/quantity/units.ts'

const note = 'As it stands in March: look at the second injectors.'
async function there(sheet: Sheet, words = '') {
  const read = await readBuildCode(await buildCode(sheet, allFields, words), allFields)
  if (!read.ok) throw new Error(read.says)
  return read
}
/** What a link is meant to bring: values and where they came from. */
const brought = (sheet: Sheet) => Object.fromEntries(Object.entries(sheet.entries).map(([path, { value, from }]) => [path, { value, ...(from && { from }) }]))

describe('a build sent as a link', () => {
  test.each(Object.entries(builds))('%s arrives with every number and its provenance, and the note', async (_, sheet) => {
    const read = await there(sheet, note)
    expect(apart(brought(read.sheet), brought(sheet))).toBe(0)
    expect(read.note).toBe(note)
  })
  test('brings no other text than the note: no names, no remarks, nothing as it was typed', async () => {
    const told = setEntry({ ...emptySheet('Customer of the workshop'), note: 'owes two hours' }, 'engine.speedLimit', { value: 800, typed: '7640 rpm', note: 'his idea' })
    const { sheet } = await there(setEntry(told, 'boost.compressorMap', { value: { ...smallMap, name: 'From the drawer' } }))
    expect(JSON.stringify(sheet)).not.toMatch(/Customer|owes|7640|idea|drawer/)
  })
  test('with a map of its own, every field that builders enter and a long note stays under 1500 characters', async () => {
    const entries: Record<string, Entry> = { ...builds.street.entries, ...builds.track.entries, ...builds.faulty.entries, 'boost.compressorMap': { value: measured(smallMap), from: 'maker' } }
    for (const [path, field] of allFields) if (Object.keys(entries).length < 100 && field.start !== null && field.shape.kind !== 'map') entries[path] ??= { value: field.start, from: 'measured' }
    expect((await buildCode({ ...emptySheet(), entries }, allFields, 'n'.repeat(200))).length).toBeLessThan(1500)
  })
  test('with every field of the sheet filled in is still far within what is read', async () => {
    const entries = Object.fromEntries([...allFields].map(([path, { start }]) => [path, { value: start, from: 'guess' as const }]))
    const sheet = { ...emptySheet(), entries }
    expect((await buildCode(sheet, allFields, note)).length).toBeLessThan(4000)
    const arrived = (await there(sheet)).sheet.entries
    for (const [path, { start }] of allFields) expect(apart(arrived[path]!.value, start), path).toBe(0)
  })
  test('keeps any number to twelve figures', async () => {
    const numeric = [...allFields.values()].filter(({ shape }) => isQuantity(shape) && !shape.whole)
    await fc.assert(fc.asyncProperty(fc.constantFrom(...numeric), fc.double({ min: 0, max: 1, noNaN: true }), async (field, share) => {
      if (!isQuantity(field.shape)) return
      const [low, high] = field.shape.range
      const value = low + share * (high - low)
      const back = (await there(setEntry(emptySheet(), field.path, { value }))).sheet.entries[field.path]!.value as number
      expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value))
    }), { numRuns: 500 })
  })
  test('keeps what is not known as not known', async () => {
    const { sheet } = await there(setEntry(emptySheet(), 'engine.speedLimit', { value: null, from: 'guess' }))
    expect(sheet.entries).toEqual({ 'engine.speedLimit': { value: null, from: 'guess' } })
  })
  test('shows its note as plain words on one line, however it was written', async () => {
    const read = await there(emptySheet(), 'one\u202etwo\n<b>three</b>\u0000  four')
    expect(read.note).toBe('one two <b>three</b> four')
    expect((await there(emptySheet(), 'x'.repeat(500))).note).toBe('x'.repeat(200))
  })
})

describe('what links that were sent out rest on', () => {
  test('no two fields are marked alike', () => expect(new Set([...allFields.keys()].map(mark)).size).toBe(allFields.size))
  test('the units of numbers are those that were first published, each known', () => {
    expect(new Set(linkUnits).size).toBe(linkUnits.length)
    const known = new Set([...allFields.values()].flatMap(({ shape }) => (isQuantity(shape) ? unitsOf(shape.kind) : shape.kind === 'curve' ? [...unitsOf(shape.x.kind), ...unitsOf(shape.y.kind)] : [])).map((u) => u.name))
    expect([...linkUnits].slice(0, 8)).toEqual(['1', '%', '°', 'mm', 'µm', 'm', 'km', 'in'])
    expect(linkUnits.filter((name) => known.has(name)).length).toBeGreaterThan(30)
  })
  test('a link made by the first edition opens as it did', async () => {
    const read = await readBuildCode(firstEdition, allFields)
    expect(read).toMatchObject({ ok: true, note: 'First', sheet: { entries: { 'fuel.primary.ratedFlow': { value: expect.closeTo(650e-6 / 60, 15) as number, from: 'measured' }, 'engine.compressionRatio': { value: 9 }, 'oil.grade': { value: '10W-40' } } } })
  })
})
// Held fast: made when links were first published.
const firstEdition = '1Y2RkdcssKi5h7lpXZfHhpWfdfU4OCT0GPwYGITZDg3BdEwMA'

/** How many numbers of two values differ beyond the twelfth figure; names of maps stay behind. Anything else that differs counts as endless. */
function apart(a: unknown, b: unknown): number {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-12 * Math.abs(b) ? 0 : 1
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b ? 0 : Infinity
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])].filter((key) => key !== 'name')
  return keys.reduce((sum, key) => sum + apart((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]), 0)
}

/** As a scan of a printed map would be: uneven steps, more figures. */
const measured = (map: CompressorMap): CompressorMap => ({
  ...map, lines: map.lines.map((line, i) => ({ ...line, flow: line.flow.map((x, j) => Number((x + 1e-4 * ((i * 7 + j * 3) % 5)).toFixed(4))), efficiency: line.efficiency.map((x, j) => Number((x - 0.001 * ((i + j) % 4)).toFixed(3))) })),
})

import { afterEach, describe, expect, test, vi } from 'vitest'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'
import { storage, tab } from './browser.ts'

afterEach(() => { vi.unstubAllGlobals(); vi.useRealTimers() })
const limit = 'engine.speedLimit'
const set = (value: unknown) => (sheet: ReturnType<typeof emptySheet>) => setEntry(sheet, limit, { value })
const keys = (local: { map: Map<string, string> }) => [...local.map.keys()].filter((k) => k.startsWith('trochoid.build.'))

describe('builds of the reader', () => {
  test('are kept each under a key of its own, and come back with the next visit', async () => {
    const local = storage()
    const { edit } = await tab(local)
    edit.open(emptySheet('One'))
    edit.open(emptySheet('Two'))
    expect(keys(local)).toHaveLength(2)
    const { own } = await tab(local)
    expect(Object.values(own.builds.get().own).map((s) => s.name).sort()).toEqual(['One', 'Two'])
    expect(own.builds.get().own[own.builds.get().chosen]?.name).toBe('Two')
  })
  test('of one name are told apart by a number', async () => {
    const { own, edit } = await tab(storage())
    for (let i = 0; i < 3; i++) edit.open(emptySheet('My build'))
    expect(Object.values(own.builds.get().own).map((s) => s.name).sort()).toEqual(['My build', 'My build (2)', 'My build (3)'])
  })
  test('go back and forward through every change, the removal of a build among them', async () => {
    const local = storage()
    const { own, edit } = await tab(local)
    const limits = () => Object.values(own.builds.get().own).map((s) => s.entries[limit]?.value)
    edit.open(emptySheet('One'))
    const id = own.builds.get().chosen
    vi.useFakeTimers()
    edit.edit(id, set(700)); vi.advanceTimersByTime(5000)
    edit.edit(id, set(800)); vi.advanceTimersByTime(5000)
    edit.edit(id, (s) => ({ ...s, name: 'Other' })); vi.advanceTimersByTime(5000)
    edit.remove(id)
    expect([own.builds.get().own, own.builds.get().chosen, keys(local)]).toEqual([{}, own.demoChosen, []])
    edit.undo()
    expect(own.builds.get().own[id]?.name).toBe('Other')
    expect([own.builds.get().chosen, keys(local).length]).toEqual([id, 1])
    edit.undo(); expect(own.builds.get().own[id]?.name).toBe('One')
    edit.undo(); expect(limits()).toEqual([700])
    edit.undo(); expect(limits()).toEqual([undefined])
    edit.redo(); edit.redo(); expect(limits()).toEqual([800])
    edit.edit(id, set(900))
    expect(edit.redoable.get(), 'a new change ends what was ahead').toBe(false)
    const again = await tab(local)
    expect(Object.values(again.own.builds.get().own)[0]?.entries[limit]?.value).toBe(900)
  })
  test('take keys typed one after another into a field as one step', async () => {
    const { own, edit } = await tab(storage())
    edit.open(emptySheet())
    const id = own.builds.get().chosen
    for (const n of [7, 76, 765]) edit.edit(id, set(n))
    edit.edit(id, (s) => setEntry(s, 'engine.compressionRatio', { value: 9 }))
    edit.undo()
    expect(own.builds.get().own[id]?.entries).toEqual({ [limit]: { value: 765 } })
    edit.undo()
    expect(own.builds.get().own[id]?.entries).toEqual({})
  })
})

describe('where the browser does not keep', () => {
  test.each([['QuotaExceededError', 'full'], ['SecurityError', 'blocked']])('%s: editing goes on, it is said, and leaving the page is asked for', async (error, word) => {
    const local = storage()
    const { own, edit, fire } = await tab(local)
    edit.open(emptySheet('One'))
    const id = own.builds.get().chosen
    local.refuse = error
    edit.edit(id, set(700))
    expect([own.builds.get().own[id]?.entries[limit]?.value, own.saved.get()]).toEqual([700, word])
    const leaving = { preventDefault: vi.fn() }
    fire('beforeunload', leaving)
    expect(leaving.preventDefault).toHaveBeenCalled()
    local.refuse = null
    edit.edit(id, (s) => setEntry(s, 'engine.compressionRatio', { value: 9 }))
    expect(own.saved.get()).toBe('saved')
    leaving.preventDefault.mockClear()
    fire('beforeunload', leaving)
    expect(leaving.preventDefault).not.toHaveBeenCalled()
  })
  test('a build too large to keep leaves what was kept of it', async () => {
    const local = storage()
    const { own, edit } = await tab(local)
    edit.open(emptySheet('One'))
    const id = own.builds.get().chosen
    const before = local.map.get(`trochoid.build.${id}`)
    edit.edit(id, (s) => ({ ...s, note: 'x'.repeat(400_000) }))
    expect(own.saved.get()).toBe('too large')
    expect(local.map.get(`trochoid.build.${id}`)).toBe(before)
  })
})

describe('a store damaged by hand', () => {
  test('is set aside and named, and the other builds stay whole', async () => {
    const local = storage()
    const first = await tab(local)
    first.edit.open(emptySheet('One'))
    first.edit.open(emptySheet('Two'))
    const [one] = Object.entries(first.own.builds.get().own).find(([, s]) => s.name === 'One')!
    local.map.set(`trochoid.build.${one}`, '{"version":1,"value":{"name":"One"')
    const { own, aside } = await tab(local)
    expect(Object.values(own.builds.get().own).map((s) => s.name)).toEqual(['Two'])
    expect(own.saved.get()).toBe('damaged')
    expect(aside.allSetAside()).toEqual([{ address: `trochoid.build.${one}.set-aside`, text: '{"version":1,"value":{"name":"One"' }])
    aside.throwAway(aside.allSetAside()[0]!.address)
    expect(aside.allSetAside()).toEqual([])
  })
  test('is not shown before its values were read closely, where only its form is right', async () => {
    const local = storage()
    const first = await tab(local)
    first.edit.open(setEntry(emptySheet('One'), limit, { value: 800 }))
    const id = first.own.builds.get().chosen
    local.map.set(`trochoid.build.${id}`, local.map.get(`trochoid.build.${id}`)!.replace('800', '"<b>fast</b>"'))
    vi.doMock('../../src/state/solver/look.ts', () => lookWithFields)
    const { own, aside } = await tab(local)
    expect([own.builds.get().own, own.builds.get().chosen, own.saved.get()]).toEqual([{}, own.demoChosen, 'damaged'])
    expect(aside.allSetAside()[0]?.text).toContain('<b>fast</b>')
  })
  test('is taken, where a hand changed a number into another good one', async () => {
    const local = storage()
    const first = await tab(local)
    first.edit.open(setEntry(emptySheet('One'), limit, { value: 800 }))
    const id = first.own.builds.get().chosen
    local.map.set(`trochoid.build.${id}`, local.map.get(`trochoid.build.${id}`)!.replace('800', '850'))
    vi.doMock('../../src/state/solver/look.ts', () => lookWithFields)
    const { own } = await tab(local)
    expect(own.builds.get().own[id]?.entries[limit]?.value).toBe(850)
    expect(own.builds.get().chosen).toBe(id)
  })
  test.each(['constructor', '__proto__', 'demo:constructor', 5, null, '<b>'])('that names %s as the build to show leads to the demo build or an own one, never to a fault', async (name) => {
    const local = storage({ 'trochoid.chosen': JSON.stringify({ version: 1, value: name }), 'trochoid.build.__proto__': '{}', 'trochoid.build.': '{}' })
    const { own } = await tab(local)
    expect(own.builds.get().own).toEqual({})
    expect(own.isOwn(own.builds.get())).toBe(false)
    expect(Object.getPrototypeOf(own.builds.get().own)).toBe(Object.prototype)
  })
})

test('builds kept all in one, as they once were, are kept each for itself from then on', async () => {
  const sheet = setEntry(emptySheet('Former'), limit, { value: 800 })
  const local = storage({ 'trochoid.builds': JSON.stringify({ version: 1, value: { chosen: 'own:abc', own: { 'own:abc': sheet } } }) })
  vi.doMock('../../src/state/solver/look.ts', () => lookWithFields)
  const { own } = await tab(local)
  expect(own.builds.get()).toEqual({ chosen: 'own-abc', own: { 'own-abc': sheet } })
  expect([...local.map.keys()]).toEqual(['trochoid.build.own-abc'])
})

test('a number put in from a calculator comes on top of what another tab has changed meanwhile', async () => {
  const local = storage()
  const first = await tab(local)
  first.edit.open(emptySheet('One'))
  const id = first.own.builds.get().chosen
  const second = await tab(local)
  first.here()
  first.edit.edit(id, set(800))
  second.here()
  const { putIn } = await import('../../src/state/putIn.ts')
  const takeBack = putIn('engine.compressionRatio', { value: 9, typed: '9' })
  const { own } = await tab(local)
  expect(own.builds.get().own[id]?.entries).toEqual({ [limit]: { value: 800 }, 'engine.compressionRatio': { value: 9, typed: '9', from: 'guess' } })
  second.here()
  takeBack()
  expect((await tab(local)).own.builds.get().own[id]?.entries).toEqual({ [limit]: { value: 800 } })
})

const lookWithFields = { allFields: async () => (await import('@trochoid/compute/build/everything.ts')).allFields }

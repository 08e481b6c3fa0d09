import { afterEach, describe, expect, test, vi } from 'vitest'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'
import { storage, tab } from './browser.ts'

afterEach(() => { vi.unstubAllGlobals() })
const limit = 'engine.speedLimit'
const ratio = 'engine.compressionRatio'
type Sheet = ReturnType<typeof emptySheet>
const set = (path: string, value: unknown) => (sheet: Sheet) => setEntry(sheet, path, { value })

/** Two tabs on one build. */
async function two() {
  const local = storage()
  const first = await tab(local)
  first.edit.open(set(limit, 700)(emptySheet('One')))
  const id = first.own.builds.get().chosen
  const second = await tab(local)
  first.here()
  const key = `trochoid.build.${id}`
  const entries = (one: typeof first) => one.own.builds.get().own[id]?.entries
  return { local, first, second, id, key, entries }
}

describe('one build in two tabs', () => {
  test('the second shows both values of a field that the first changed, and takes over the rest', async () => {
    const { first, second, id, key, entries } = await two()
    first.edit.edit(id, set(limit, 800))
    second.here(); second.hear(key)
    expect(entries(second)).toEqual({ [limit]: { value: 800 } })
    expect(second.tabs.elsewhere.get().differences).toEqual([{ id, path: limit, before: { value: 700 }, after: { value: 800 } }])
    second.tabs.settle({ id, path: limit })
    expect(second.tabs.elsewhere.get().differences).toEqual([])
  })
  test('both changing one field: the first is told of the value that took the place of its own', async () => {
    const { first, second, id, key } = await two()
    first.edit.edit(id, set(limit, 800))
    second.here(); second.hear(key)
    second.edit.edit(id, set(limit, 900))
    first.here(); first.hear(key)
    expect(first.tabs.elsewhere.get().differences).toEqual([{ id, path: limit, before: { value: 800 }, after: { value: 900 } }])
  })
  test('a tab that has not heard yet does not write over what the other wrote', async () => {
    const { first, second, id, entries } = await two()
    first.edit.edit(id, set(ratio, 9))
    second.here()
    second.edit.edit(id, set(limit, 900))
    expect(entries(second)).toEqual({ [limit]: { value: 900 }, [ratio]: { value: 9 } })
    expect(second.tabs.elsewhere.get().differences.map((d) => d.path)).toEqual([ratio])
  })
  test('both typing into the same field before either heard: the later one stands, the earlier one is shown beside it', async () => {
    const { first, second, id, entries } = await two()
    first.edit.edit(id, set(limit, 800))
    second.here()
    second.edit.edit(id, set(limit, 900))
    expect(entries(second)?.[limit]).toEqual({ value: 900 })
    expect(second.tabs.elsewhere.get().differences).toEqual([{ id, path: limit, before: { value: 700 }, after: { value: 800 } }])
  })
  test('taking back in one leaves what the other did', async () => {
    const { first, second, id, entries } = await two()
    first.edit.edit(id, set(limit, 800))
    second.here()
    second.edit.edit(id, set(ratio, 9))
    first.here()
    first.edit.undo()
    expect(entries(first)).toEqual({ [limit]: { value: 700 }, [ratio]: { value: 9 } })
  })
  test('a build removed in the other can be put back', async () => {
    const { first, second, id, key } = await two()
    first.edit.remove(id)
    second.here(); second.hear(key)
    expect(second.own.builds.get().own).toEqual({})
    const gone = second.tabs.elsewhere.get().removed[id]!
    expect(gone.name).toBe('One')
    second.edit.putBack(id, gone)
    second.tabs.settleRemoved(id)
    expect(second.own.builds.get().chosen).toBe(id)
    expect(second.tabs.elsewhere.get().removed).toEqual({})
  })
  test('what was not decided is still there when the tab is loaded again', async () => {
    const { local, first, second, id, key } = await two()
    first.edit.edit(id, set(limit, 800))
    second.here(); second.hear(key)
    const again = await tab(local, second.session)
    expect(again.tabs.elsewhere.get().differences).toEqual([{ id, path: limit, before: { value: 700 }, after: { value: 800 } }])
  })
  test('each tab keeps to the build it shows', async () => {
    const { local, first, second } = await two()
    first.edit.choose('demo:track')
    const again = await tab(local, second.session)
    expect(again.own.isOwn(again.own.builds.get())).toBe(false)
    second.here()
    expect(second.own.isOwn(second.own.builds.get())).toBe(true)
  })
})

test('a field that another tab changes twice keeps what first stood here, and one that comes back is settled', async () => {
  const { tabs } = await tab(storage())
  const one = tabs.noted([], 'a', [{ path: limit, before: { value: 1 }, after: { value: 2 } }])
  const two = tabs.noted(one, 'a', [{ path: limit, before: { value: 2 }, after: { value: 3 } }])
  expect(two).toEqual([{ id: 'a', path: limit, before: { value: 1 }, after: { value: 3 } }])
  expect(tabs.noted(two, 'a', [{ path: limit, before: { value: 3 }, after: { value: 1 } }])).toEqual([])
})

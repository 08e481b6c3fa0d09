import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { buildKey, builds, demoChosen, formerKey, saved } from './own.ts'
import { forget, load, putAside, save, textOf } from './kept.ts'
import { allFields } from './solver/look.ts'

/** Builds that need a closer look before they are shown: kept in an older way, changed by another hand, or brought by an address. */
export async function arrive(doubted: Readonly<Record<string, Sheet>>, sends: boolean): Promise<void> {
  await fromFormer()
  for (const [id, sheet] of Object.entries(doubted)) await lookClosely(id, sheet)
  if (sends) await (await import('./sent.ts')).receive()
}

/** Each build of the one former store under a key of its own. */
async function fromFormer(): Promise<void> {
  const text = textOf(formerKey)
  if (text === null) return
  const value = whole(text)
  let all = value !== null
  for (const [id, sheet] of Object.entries(value?.own ?? {})) {
    const newId = id.replace(/[^\w-]/g, '-')
    if (save(buildKey(newId), sheet as Sheet) !== 'saved') { all = false; continue }
    const kept = load(buildKey(newId))
    if (kept.found !== 'value') { all = false; continue }
    await lookClosely(newId, kept.value)
    if (value?.chosen === id && builds.get().own[newId] && builds.get().chosen === demoChosen) builds.set({ ...builds.get(), chosen: newId })
  }
  if (all) return forget(formerKey)
  putAside(formerKey, text)
  saved.set('damaged')
}
function whole(text: string): { readonly chosen?: unknown; readonly own?: object } | null {
  try { return (JSON.parse(text) as { value?: { own?: object } }).value ?? null } catch { return null }
}

/** Reads a kept build as a file is read, whole or not at all. */
async function lookClosely(id: string, sheet: Sheet): Promise<void> {
  const [{ readDocument }, fields] = await Promise.all([import('@trochoid/compute/build/schema.ts'), allFields()])
  const read = readDocument(sheet, fields)
  const now = builds.get()
  if (read.ok) {
    save(buildKey(id), read.sheet)
    return builds.set({ ...now, own: { ...now.own, [id]: read.sheet } })
  }
  const text = textOf(buildKey(id))
  if (text !== null) putAside(buildKey(id), text)
  saved.set('damaged')
  if (now.chosen === id) builds.set({ ...now, chosen: Object.keys(now.own).at(-1) ?? demoChosen })
}

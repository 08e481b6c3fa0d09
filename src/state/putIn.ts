import { emptySheet, setEntry, type Entry } from '@trochoid/compute/build/sheet.ts'
import { load, save } from './kept.ts'
import { buildKey, builds, chosenHereKey, chosenKey, isOwn, newId, saved } from './own.ts'

/**
 * Puts one number in the reader's own build: the one shown, else the last, else a new one that begins with common practice.
 * On top of what is kept of it at this moment: another tab may have changed it. It needs none of what the sheet needs to edit.
 */
export function putIn(path: string, entry: Entry): void {
  const now = builds.get()
  const id = isOwn(now) ? now.chosen : Object.keys(now.own).at(-1) ?? newId()
  const kept = load(buildKey(id))
  // Where the last change was not kept, what is here is newer.
  const whole = saved.get() === null || saved.get() === 'saved'
  const sheet = whole && kept.found === 'value' && kept.sound ? kept.value : now.own[id] ?? emptySheet()
  const next = setEntry(sheet, path, { from: 'guess', ...sheet.entries[path], ...entry })
  builds.set({ ...now, chosen: id, own: { ...now.own, [id]: next } })
  saved.set(save(buildKey(id), next))
  for (const key of [chosenKey, chosenHereKey]) save(key, id)
}

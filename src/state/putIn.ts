import { emptySheet, setEntry, type Entry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { load, save } from './kept.ts'
import { buildKey, builds, chosenHereKey, chosenKey, isOwn, newId, saved } from './own.ts'

/**
 * Puts one number in the reader's own build: the one shown, else the last, else a new one that begins with common practice.
 * On top of what is kept of it at this moment: another tab may have changed it. It needs none of what the sheet needs to edit.
 * @returns what takes it back: the number that stood there before, and nothing else of the build
 */
export function putIn(path: string, entry: Entry): () => void {
  const now = builds.get()
  const id = isOwn(now) ? now.chosen : Object.keys(now.own).at(-1) ?? newId()
  const sheet = present(id)
  const before = sheet.entries[path]
  write(id, setEntry(sheet, path, { from: 'guess', ...before, ...entry }))
  for (const key of [chosenKey, chosenHereKey]) save(key, id)
  return () => write(id, setEntry(present(id), path, before))
}

function present(id: string): Sheet {
  const kept = load(buildKey(id))
  // Where the last change was not kept, what is here is newer.
  const whole = saved.get() === null || saved.get() === 'saved'
  return whole && kept.found === 'value' && kept.sound ? kept.value : builds.get().own[id] ?? emptySheet()
}

function write(id: string, sheet: Sheet): void {
  const now = builds.get()
  builds.set({ ...now, chosen: id, own: { ...now.own, [id]: sheet } })
  saved.set(save(buildKey(id), sheet))
}

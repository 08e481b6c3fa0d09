import { emptySheet, setEntry, type Entry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { edit, open } from './edit.ts'
import { builds, isOwn } from './own.ts'

/** Puts one number in the reader's own build: the one shown, else the last, else a new one that begins with common practice. */
export function putIn(path: string, entry: Entry): void {
  const now = builds.get()
  const id = isOwn(now) ? now.chosen : Object.keys(now.own).at(-1)
  const put = (sheet: Sheet): Sheet => setEntry(sheet, path, { from: 'guess', ...sheet.entries[path], ...entry })
  if (id === undefined) open(put(emptySheet()))
  else edit(id, put)
}

import { emptySheet, setEntry, type Entry } from '@trochoid/compute/build/sheet.ts'
import { builds, isOwn, keep } from './own.ts'

/** Puts one number in the reader's own build: the one shown, else the last, else a new one that begins with common practice. */
export function putIn(path: string, entry: Entry): void {
  const now = builds.get()
  const id = isOwn(now) ? now.chosen : Object.keys(now.own).at(-1) ?? `own:${Date.now().toString(36)}`
  const sheet = now.own[id] ?? emptySheet()
  keep({ chosen: id, own: { ...now.own, [id]: setEntry(sheet, path, { from: 'guess', ...sheet.entries[path], ...entry }) } })
}

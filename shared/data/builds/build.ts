import { type Entry, type From, type Sheet } from '../../build/sheet.ts'

/** An invented build: what it says of each field it touches, as [value, where from, note]. */
export function inventedBuild(name: string, note: string, said: Readonly<Record<string, readonly [value: unknown, from: From, note?: string]>>): Sheet {
  const entries: Record<string, Entry> = {}
  for (const [path, [value, from, words]] of Object.entries(said)) entries[path] = words === undefined ? { value, from } : { value, from, note: words }
  return { format: 'trochoid-build', version: 1, name, note, entries }
}

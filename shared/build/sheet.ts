import { type Shape, type ValueOf } from '../quantity/quantity.ts'
import { type BuildRecord } from '../record/record.ts'
import { type Field } from './field.ts'

/** Where a number came from. An untouched field is `common`: its start value is common practice and says so. */
export type From = 'measured' | 'maker' | 'common' | 'guess'
/** What the reader has said of one field. A null value means: not known. `typed` keeps the text as it was written. */
export type Entry = { readonly value: unknown; readonly typed?: string; readonly from?: From; readonly note?: string }
/** Every number of one build. */
export type Sheet = {
  readonly format: 'trochoid-build'
  readonly version: 1
  readonly name: string
  readonly note: string
  readonly entries: Readonly<Record<string, Entry>>
  /** What was measured and done on the engine itself. */
  readonly record?: BuildRecord
}
/** One change: what stood there and what stands there now. Undo swaps them; a comparison is a list of them. */
export type Patch = { readonly path: string; readonly before: Entry | undefined; readonly after: Entry | undefined }

export const emptySheet = (name = 'My build'): Sheet => ({ format: 'trochoid-build', version: 1, name, note: '', entries: {} })

/** The value of a field in this sheet: what the reader said, else the start value; null when it is not known. */
export function valueAt<S extends Shape>(sheet: Sheet, field: Field<S>): ValueOf<S> | null {
  const entry = sheet.entries[field.path]
  return entry === undefined ? field.start : (entry.value as ValueOf<S> | null)
}

export const fromAt = (sheet: Sheet, field: Field): From => sheet.entries[field.path]?.from ?? 'common'

/** The sheet with one entry set, or taken away. */
export function setEntry(sheet: Sheet, path: string, entry: Entry | undefined): Sheet {
  const { [path]: _, ...others } = sheet.entries
  return { ...sheet, entries: entry === undefined ? others : { ...others, [path]: entry } }
}

export const patchOf = (sheet: Sheet, path: string, after: Entry | undefined): Patch => ({ path, before: sheet.entries[path], after })
export const apply = (sheet: Sheet, patches: readonly Patch[]): Sheet => patches.reduce((s, p) => setEntry(s, p.path, p.after), sheet)
export const reverse = (patches: readonly Patch[]): readonly Patch[] => patches.map(({ path, before, after }) => ({ path, before: after, after: before })).reverse()

/** What differs from one sheet to another, field by field. */
export function difference(from: Sheet, to: Sheet): readonly Patch[] {
  const paths = [...new Set([...Object.keys(from.entries), ...Object.keys(to.entries)])].sort()
  return paths.map((path) => ({ path, before: from.entries[path], after: to.entries[path] })).filter((p) => JSON.stringify(p.before) !== JSON.stringify(p.after))
}

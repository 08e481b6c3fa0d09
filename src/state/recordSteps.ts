import type { Entry, Patch, Sheet } from '@trochoid/compute/build/sheet.ts'
import { emptyRecord, type BuildRecord, type Written } from '@trochoid/compute/record/record.ts'

/** Lines of the record as patches: their paths have a stroke, so that no field is meant, and no line is called notes. */
const root = 'record/', notes = `${root}notes`
export const isOfRecord = ({ path }: Patch): boolean => path.startsWith(root)

/** What leads from the record of one sheet to that of another, line by line. */
export function recordChanged(from: BuildRecord = emptyRecord, to: BuildRecord = emptyRecord): readonly Patch[] {
  const as = (value: Written | string | undefined): Entry | undefined => (value === undefined || value === '' ? undefined : { value })
  const ids = [...new Set([...Object.keys(from.lines), ...Object.keys(to.lines)])]
  return [...ids.map((id): Patch => ({ path: root + id, before: as(from.lines[id]), after: as(to.lines[id]) })), { path: notes, before: as(from.notes), after: as(to.notes) }]
    .filter((p) => JSON.stringify(p.before) !== JSON.stringify(p.after))
}

/** The sheet with lines of its record changed; without any it stays as it is. */
export function recordPatched(sheet: Sheet, patches: readonly Patch[]): Sheet {
  return patches.length === 0 ? sheet : { ...sheet, record: patches.reduce(put, sheet.record ?? emptyRecord) }
}
function put(record: BuildRecord, { path, after }: Patch): BuildRecord {
  if (path === notes) return { ...record, notes: String(after?.value ?? '') }
  const id = path.slice(root.length)
  const { [id]: _, ...others } = record.lines
  return { ...record, lines: after === undefined ? others : { ...others, [id]: after.value as Written } }
}

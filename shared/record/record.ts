/** What was measured, fitted and done on one engine: kept with its build sheet and in its file, never in a link. */
export type Written = { readonly value?: number; readonly text?: string; /** As typed. */ readonly typed?: string; readonly done?: boolean; readonly by?: string; /** Day, as 2026-05-01. */ readonly on?: string; readonly note?: string }
export type BuildRecord = { readonly lines: Readonly<Record<string, Written>>; readonly notes: string }
export const emptyRecord: BuildRecord = { lines: {}, notes: '' }

/** The record with one line changed; a line with nothing in it goes. */
export function writeLine(record: BuildRecord, id: string, change: Written): BuildRecord {
  const { [id]: was, ...others } = record.lines
  const next = Object.fromEntries(Object.entries({ ...was, ...change }).filter(([, v]) => v !== undefined && v !== ''))
  const empty = ['value', 'text', 'done', 'note'].every((name) => next[name] === undefined || next[name] === false)
  return { ...record, lines: empty ? others : { ...others, [id]: next } }
}

import type { Ways } from './value.ts'

/** What a working needs to be written anew and copied, by id of the formula: fetched when a working is first opened. */
export type Notes = Readonly<Record<string, { readonly ways: Ways; readonly tex: readonly string[]; readonly plain: readonly string[] }>>

const fetched = new Map<string, Promise<Notes>>()
/** @param page address of the calculator's own page, beside which its notes lie */
export function notesOf(page: string): Promise<Notes> {
  let notes = fetched.get(page)
  if (!notes) {
    notes = fetch(`${page}working.json`).then((answer) => { if (!answer.ok) throw new Error(`${answer.status}`); return answer.json() as Promise<Notes> })
    fetched.set(page, notes)
  }
  return notes
}

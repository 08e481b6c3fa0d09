import { index, type Entry, type Index, type Kind } from './find.ts'
import type { Words } from './words.ts'

/** Where the lists of the search lie, below the base. */
const at = (base: string, file: string) => fetch(`${base}search/${file}`).then((got) => { if (!got.ok) throw new Error(`${file}: ${got.status}`); return got.json() as Promise<unknown> })

export type Lists = { readonly words: Words; readonly index: Index }
type Titles = { readonly words: Words; readonly entries: readonly (readonly [Kind, string, string, string?])[] }
type Rest = { readonly says: Readonly<Record<string, string>>; readonly entries: readonly Entry[] }

let titles: Promise<Titles> | undefined
let first: Promise<Lists> | undefined
let whole: Promise<Lists> | undefined
const entriesOf = (got: Titles): Entry[] => got.entries.map(([kind, title, url, also]) => ({ kind, title, url, ...(also && { also }) }))
const titlesAt = (base: string) => (titles ??= at(base, 'titles.json') as Promise<Titles>)

/** Titles and other words for them: small, so that the first key is answered at once. */
export const firstLists = (base: string): Promise<Lists> => (first ??= titlesAt(base).then((got) => ({ words: got.words, index: index(entriesOf(got), got.words) })))

/** With what each thing says, and every quantity and symptom. */
export function wholeLists(base: string): Promise<Lists> {
  whole ??= Promise.all([titlesAt(base), at(base, 'rest.json') as Promise<Rest>]).then(([got, { says, entries }]) => {
    const told = entriesOf(got).map((entry) => (says[entry.url] ? { ...entry, text: says[entry.url]! } : entry))
    return { words: got.words, index: index([...told, ...entries], got.words) }
  })
  whole.catch(() => { whole = undefined })
  return whole
}

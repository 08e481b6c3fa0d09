import { load, save, type Key } from './kept.ts'
import { store, type Store } from './store.ts'

/** Who writes into the record, and the shop whose name stands on a report: kept here alone. */
export type Person = { readonly who: string; readonly shop: string }
const text = (x: unknown): x is string => typeof x === 'string' && x.length <= 120
const key: Key<Person> = { name: 'person', version: 1, bound: 1000, read: (data) => {
  const p = data as Partial<Person> | null
  return p !== null && typeof p === 'object' && text(p.who) && text(p.shop) ? { who: p.who, shop: p.shop } : null
} }

export const person: Store<Person> = store<Person>({ who: '', shop: '' })
if (typeof document !== 'undefined') { const kept = load(key); if (kept.found === 'value') person.set(kept.value) }
export function setPerson(change: Partial<Person>): void {
  const next = { ...person.get(), ...change }
  save(key, next)
  person.set(next)
}

import { edition } from '@trochoid/compute/build/corrections.ts'
import type { Weighed } from '@trochoid/compute/build/margins.ts'
import { beforeOf, since, type Before, type Since } from '@trochoid/compute/build/since.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { forget, load, namesFrom, save, sumOf, type Key } from './kept.ts'
import { builds, isOwn } from './own.ts'
import { store, type Store } from './store.ts'

/** Margins of a build beside the edition of the formulas that gave them, and what tells whether its numbers are still the same. */
type Kept = Before & { readonly sum: number }
const weighedName = 'weighed.'
const keyOf = (id: string): Key<Kept> => ({ name: weighedName + id, version: 1, bound: 20_000, read })

function read(data: unknown): Kept | null {
  const kept = data as Partial<Kept> | null
  const right = typeof kept?.edition === 'number' && typeof kept.sum === 'number' && typeof kept.margins === 'object' && kept.margins !== null
    && Object.values(kept.margins).every((m: unknown) => typeof m === 'object' && m !== null && typeof (m as { state?: unknown }).state === 'string' && ['number', 'object'].includes(typeof (m as { left?: unknown }).left))
  return right ? (kept as Kept) : null
}

/** What moved in the build that is shown since it was last weighed under earlier formulas, until the reader has seen it. */
export type Told = Since & { readonly id: string; readonly name: string; /** Its own numbers were changed too. */ readonly changed: boolean; readonly accept: () => void }
export const corrected: Store<Told | null> = store<Told | null>(null)

/** Remembers what a build's margins are; says first what the corrections of its formulas have moved. */
export function remember(sheet: Sheet, weighed: readonly Weighed[]): void {
  const now = builds.get()
  const id = now.chosen
  if (!isOwn(now) || now.own[id] !== sheet) return
  const sum = sumOf(JSON.stringify(Object.entries(sheet.entries).map(([path, { value }]) => [path, value]).sort()))
  const write = () => { save(keyOf(id), { ...beforeOf(edition, weighed), sum }) }
  const kept = load(keyOf(id))
  if (kept.found !== 'value' || kept.value.edition >= edition) {
    if (corrected.get() !== null) corrected.set(null)
    return write()
  }
  corrected.set({ ...since(kept.value, weighed), id, name: sheet.name, changed: kept.value.sum !== sum, accept: () => { write(); corrected.set(null) } })
  dispatchEvent(new Event('trochoid:notice'))
  for (const name of namesFrom(weighedName)) if (!Object.hasOwn(now.own, name.slice(weighedName.length))) forget({ name })
}

import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { load, save, type Key, type Loaded, type Saved } from './kept.ts'
import { store, type Store } from './store.ts'

/** The invented build that pages are made with. */
export const demoChosen = 'demo:street'
/** The reader's builds by an id of their own, and which one the pages show: one of them, or `demo:` and the name of an invented one. */
export type Builds = { readonly chosen: string; readonly own: Readonly<Record<string, Sheet>> }

export const buildsKey: Key<Builds> = { name: 'builds', version: 1, bound: 1_500_000, read: readBuilds }

/** Only the form is looked at here, on every page; values are weighed field by field where they are used. */
function readBuilds(data: unknown): Builds | null {
  if (!plain(data) || typeof data['chosen'] !== 'string' || !plain(data['own'])) return null
  const sheets = Object.values(data['own'])
  const right = sheets.every((s) => plain(s) && s['format'] === 'trochoid-build' && s['version'] === 1 && typeof s['name'] === 'string' && typeof s['note'] === 'string'
    && plain(s['entries']) && Object.values(s['entries']).every((e) => plain(e) && 'value' in e))
  return right ? (data as Builds) : null
}
const plain = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x)

const first: Loaded<Builds> = typeof document === 'undefined' ? { found: 'none' } : load(buildsKey)
export const builds: Store<Builds> = store(first.found === 'value' ? first.value : { chosen: demoChosen, own: {} })
/** What became of the last save: said to the reader when it is not `saved`. */
export const saved: Store<Saved | 'damaged' | null> = store<Saved | 'damaged' | null>(first.found === 'damaged' || first.found === 'blocked' ? first.found : null)
/** What could not be read of the store, for the reader to fetch. */
export const damaged: string | null = first.found === 'damaged' ? first.text : null

export function keep(next: Builds): void {
  builds.set(next)
  saved.set(save(buildsKey, next))
}
/** Whether the pages are to show other numbers than those they were built with. */
export const hasOwn = (): boolean => builds.get().chosen !== demoChosen
export const isOwn = ({ chosen, own }: Builds): boolean => Object.hasOwn(own, chosen)

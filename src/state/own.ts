import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { load, type Key, type Loaded } from './kept.ts'

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

export const loadBuilds = (): Loaded<Builds> => load(buildsKey)

/** Whether the pages are to show other numbers than those they were built with. */
export function hasOwn(): boolean {
  const kept = loadBuilds()
  return kept.found === 'value' && kept.value.chosen !== demoChosen
}

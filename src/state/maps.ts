import { readMap } from '@trochoid/compute/calculation/inputs.ts'
import type { CompressorMap } from '@trochoid/compute/quantity/quantity.ts'
import { fromOtherTabs, load, save, type Key, type Saved } from './kept.ts'
import { store, type Store } from './store.ts'

/** The reader's own compressor maps by an id of their own, in the order in which they came. */
export type Maps = Readonly<Record<string, CompressorMap>>
const most = 200

export const mapsKey: Key<Maps> = { name: 'maps', version: 1, bound: 1_500_000, read: readMaps }

function readMaps(data: unknown): Maps | null {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return null
  const entries = Object.entries(data)
  return entries.length <= most && entries.every(([, map]) => readMap(map, 'A map').ok) ? (data as Maps) : null
}

const first = typeof document === 'undefined' ? { found: 'none' as const } : load(mapsKey)
export const maps: Store<Maps> = store<Maps>(first.found === 'value' ? first.value : {})
/** What became of the last save, or what was found when the page opened. */
export const mapsSaved: Store<Saved | 'damaged' | null> = store<Saved | 'damaged' | null>(first.found === 'damaged' || first.found === 'blocked' ? first.found : null)

fromOtherTabs((name) => {
  if (name !== mapsKey.name) return
  const kept = load(mapsKey)
  if (kept.found === 'value') maps.set(kept.value)
})

function keep(next: Maps): void {
  maps.set(next)
  mapsSaved.set(save(mapsKey, next))
}

/** Keeps a map beside those that are there, under a name that none of them has, and tells its id. */
export function keepMap(map: CompressorMap): string {
  const now = maps.get()
  const taken = new Set(Object.values(now).map(({ name }) => name))
  let name = map.name
  for (let i = 2; taken.has(name); i++) name = `${map.name.slice(0, 110)} (${i})`
  const id = `map:${Date.now().toString(36)}${Object.keys(now).length}`
  keep({ ...now, [id]: { ...map, name } })
  return id
}
export function removeMap(id: string): void {
  const { [id]: _, ...others } = maps.get()
  keep(others)
}

import type { Thresholds } from '@trochoid/compute/build/margins.ts'
import { load, save, type Key } from './kept.ts'
import { store, type Store } from './store.ts'

const read = (data: unknown): Thresholds | null =>
  typeof data === 'object' && data !== null && Object.values(data).every((v) => typeof v === 'number' && Number.isFinite(v) && v >= 0) ? (data as Thresholds) : null
const key: Key<Thresholds> = { name: 'thresholds', version: 1, bound: 20_000, read }

/** Where the reader lets `tight` begin, by id of the margin; those left out stay as the handbook has them. */
export const thresholds: Store<Thresholds> = store<Thresholds>({})
if (typeof document !== 'undefined') { const kept = load(key); if (kept.found === 'value') thresholds.set(kept.value) }

export function setThreshold(id: string, value: number | null): void {
  const { [id]: _, ...others } = thresholds.get()
  const next = value === null ? others : { ...others, [id]: value }
  save(key, next)
  thresholds.set(next)
}

import type { Tolerances } from '@trochoid/compute/uncertainty/inputs.ts'
import type { Spread } from '@trochoid/compute/uncertainty/spread.ts'
import { fromOtherTabs, load, save, type Key } from './kept.ts'
import { store, type Store } from './store.ts'

const forms = ['normal', 'rectangular', 'triangular']
const spread = (x: unknown): x is Spread => typeof x === 'object' && x !== null && 'half' in x && typeof x.half === 'number' && Number.isFinite(x.half) && x.half >= 0 && 'form' in x && forms.includes(x.form as string)
const read = (data: unknown): Tolerances | null => (typeof data === 'object' && data !== null && !Array.isArray(data) && Object.values(data).every(spread) ? (data as Tolerances) : null)
const key: Key<Tolerances> = { name: 'tolerances', version: 1, bound: 40_000, read }

/** What the reader said of tolerances, by id of the number, for all builds of this browser; those left out stay as the handbook has them. */
export const tolerances: Store<Tolerances> = store<Tolerances>({})
const take = () => { const kept = load(key); if (kept.found === 'value') tolerances.set(kept.value) }
if (typeof document !== 'undefined') take()
fromOtherTabs((name) => { if (name === key.name) take() })

export function setTolerance(id: string, value: Spread | null): void {
  const { [id]: _, ...others } = tolerances.get()
  const next = value === null ? others : { ...others, [id]: value }
  save(key, next)
  tolerances.set(next)
}

import type { Patch, Sheet } from '@trochoid/compute/build/sheet.ts'
import { fromOtherTabs, load, save, textOf, type Key } from './kept.ts'
import { buildKey, builds, demoChosen, idOf } from './own.ts'
import { isOfRecord } from './recordSteps.ts'
import { changed } from './steps.ts'
import { store, type Store } from './store.ts'

/**
 * The same builds in two tabs. What another tab changed is taken over, and both values of every such field stand side by side
 * until the reader has chosen: `before` is what stood here, `after` what the other tab put there.
 */
export type Difference = Patch & { readonly id: string }
/** What another tab did while this one was open. */
export type Elsewhere = { readonly differences: readonly Difference[]; /** Builds that were removed there, as they stood here. */ readonly removed: Readonly<Record<string, Sheet>> }

const key: Key<Elsewhere> = {
  name: 'elsewhere', version: 1, bound: 300_000, tab: true,
  read: (data) => (Array.isArray((data as Elsewhere | null)?.differences) && typeof (data as Elsewhere).removed === 'object' ? (data as Elsewhere) : null),
}
const none: Elsewhere = { differences: [], removed: {} }
export const elsewhere: Store<Elsewhere> = store(none)
if (typeof document !== 'undefined') { const kept = load(key); if (kept.found === 'value') elsewhere.set(kept.value) }
/** Kept for this tab, so that reloading it loses neither value. */
function note(next: Elsewhere): void { elsewhere.set(next); save(key, next) }

/** Notes what another tab changed. A field that it changes again keeps what first stood here; one that comes back to it is settled. */
export function noted(differences: readonly Difference[], id: string, patches: readonly Patch[]): readonly Difference[] {
  const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)
  const next = patches.map((patch): Difference => ({ ...patch, id, before: (differences.find((d) => d.id === id && d.path === patch.path) ?? patch).before }))
  return [...differences.filter((d) => !next.some((n) => n.id === d.id && n.path === d.path)), ...next].filter((d) => !same(d.before, d.after))
}
/** The reader has chosen, or has seen it. */
export function settle(done: Pick<Difference, 'id' | 'path'>): void {
  const now = elsewhere.get()
  note({ ...now, differences: now.differences.filter((d) => d.id !== done.id || d.path !== done.path) })
}
export function settleRemoved(id: string): void {
  const { [id]: _, ...removed } = elsewhere.get().removed
  note({ ...elsewhere.get(), removed })
}

/** What this tab last read or wrote of each build. */
const seen = new Map<string, string | null>()
export const sawNow = (id: string): void => { seen.set(id, textOf(buildKey(id))) }
for (const id of Object.keys(builds.get().own)) sawNow(id)

/** Takes over what another tab has written of one build since. Before this tab writes it, so that neither writes over the other. */
export function catchUp(id: string): void {
  const text = textOf(buildKey(id))
  if (text === null || text === seen.get(id)) return
  const kept = load(buildKey(id))
  seen.set(id, text)
  // Damaged by hand, or not as this handbook wrote it: what is here stands, and is written when it next changes.
  if (kept.found !== 'value' || !kept.sound) return
  const now = builds.get()
  const here = now.own[id]
  if (here) note({ ...elsewhere.get(), differences: noted(elsewhere.get().differences, id, changed(here, kept.value).filter((p) => !isOfRecord(p))) })
  builds.set({ ...now, own: { ...now.own, [id]: kept.value } })
}

fromOtherTabs((name) => {
  const id = idOf(name)
  if (id === null || name.includes('.set-aside')) return
  if (textOf(buildKey(id)) !== null) return catchUp(id)
  const now = builds.get()
  const { [id]: gone, ...others } = now.own
  if (!gone) return
  seen.delete(id)
  note({ ...elsewhere.get(), removed: { ...elsewhere.get().removed, [id]: gone } })
  builds.set({ ...now, own: others, chosen: now.chosen === id ? Object.keys(others).at(-1) ?? demoChosen : now.chosen })
})

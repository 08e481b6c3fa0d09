import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { readBuildCode } from '@trochoid/compute/link/buildLink.ts'
import { buildIn } from '@trochoid/compute/link/fragment.ts'
import { choose } from './edit.ts'
import { builds, sentChosen } from './own.ts'
import { allFields } from './solver/look.ts'
import { store, type Store } from './store.ts'

/** What came of the build that this page's address brings. */
export type Sent =
  | { readonly state: 'open'; readonly sheet: Sheet; readonly note: string; readonly edition: number; /** What the reader had chosen before. */ readonly before: string }
  | { readonly state: 'refused'; readonly says: string; readonly newer: boolean }
export const sent: Store<Sent | null> = store<Sent | null>(null)

/** Opens it beside the reader's own builds: nothing of theirs is changed, and nothing of it is kept. */
export async function receive(): Promise<void> {
  const linked = buildIn(location.hash)
  if (!linked) return
  const read = await readBuildCode(linked.code, await allFields())
  if (!read.ok) return sent.set({ state: 'refused', says: read.says, newer: read.newer })
  const now = builds.get()
  sent.set({ state: 'open', sheet: read.sheet, note: read.note, edition: read.edition, before: now.chosen })
  builds.set({ ...now, sent: read.sheet, chosen: sentChosen })
}

/** Back to what the reader had chosen; the address stays behind in the history. */
export function leave(chosen?: string): void {
  const now = sent.get()
  history.pushState(null, '', location.pathname + location.search)
  sent.set(null)
  choose(chosen ?? (now?.state === 'open' ? now.before : builds.get().chosen))
}

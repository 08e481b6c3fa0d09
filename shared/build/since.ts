import { corrections as all, type Correction } from './corrections.ts'
import { type State } from './margin.ts'
import { type Weighed } from './margins.ts'

/** What a build's margins were when it was last weighed. */
export type Before = { readonly edition: number; readonly margins: Readonly<Record<string, { readonly state: State; readonly left: number | null }>> }
export type Moved = { readonly id: string; readonly before: Before['margins'][string]; readonly now: Weighed; /** Corrections that name this margin. */ readonly by: readonly Correction[] }
export type Since = { readonly corrections: readonly Correction[]; readonly moved: readonly Moved[] }

export const beforeOf = (edition: number, weighed: readonly Weighed[]): Before =>
  ({ edition, margins: Object.fromEntries(weighed.map(({ id, state, left }) => [id, { state, left: left !== null && Number.isFinite(left) ? left : null }])) })

/** What was corrected since a build was last weighed, and which of its margins moved. A margin that is new or gone has not moved. */
export function since(before: Before, weighed: readonly Weighed[], known: readonly Correction[] = all): Since {
  const corrections = known.filter(({ edition }) => edition > before.edition)
  const moved = weighed.flatMap((now): Moved[] => {
    const was = Object.hasOwn(before.margins, now.id) ? before.margins[now.id] : undefined
    return was && differs(was, now) ? [{ id: now.id, before: was, now, by: corrections.filter(({ margins }) => margins.includes(now.id)) }] : []
  })
  return { corrections, moved }
}

/** Another word, or another number to the four figures in which a margin is read. */
function differs(was: Before['margins'][string], now: Weighed): boolean {
  if (was.state !== now.state) return true
  const left = now.left !== null && Number.isFinite(now.left) ? now.left : null
  if (was.left === null || left === null) return was.left !== left
  return Math.abs(was.left - left) > 1e-4 * Math.max(Math.abs(was.left), Math.abs(left))
}

import type { Weighed } from '@trochoid/compute/build/margins.ts'

/** One link before and after a decision is changed. */
export type Moved = { readonly before: Weighed; readonly after: Weighed }

/** What is left, in the link's own thresholds: 0 is the limit, 1 where tight ends. null where there is none. */
export const inThresholds = (w: Weighed): number | null => (w.left === null ? null : w.left / (w.tight || 1))

/** The links that a change moves by more than a tenth of their threshold, those first that have least left after it. */
export function movedLinks(before: readonly Weighed[], after: readonly Weighed[], most: number): readonly Moved[] {
  const changed = before.flatMap((b): Moved[] => {
    const a = after.find(({ id }) => id === b.id)
    if (!a || b.margin.always) return []
    const was = inThresholds(b), is = inThresholds(a)
    const far = was === null || is === null ? a.state !== b.state : Math.abs(is - was) > 0.1
    return far ? [{ before: b, after: a }] : []
  })
  const least = (m: Moved): number => inThresholds(m.after) ?? (m.after.state === 'short' ? -Infinity : Infinity)
  return changed.sort((a, b) => least(a) - least(b)).slice(0, most)
}

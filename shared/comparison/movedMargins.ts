import { type State } from '../build/margin.ts'
import { type Weighed } from '../build/margins.ts'

/** One link in two builds. */
export type Moved = {
  readonly id: string
  readonly before: Weighed
  readonly after: Weighed
  /** What is left afterwards less what was left before: a share, or a difference in SI. Nothing where one of them has no number. */
  readonly change: number | null
  /** The change in the margin's own threshold. */
  readonly steps: number
  /** Whether its state is a better or a worse one: better than nothing known is neither. */
  readonly turn: 'better' | 'worse' | 'told' | 'untold' | 'same'
}

const rank: Readonly<Record<State, number>> = { 'short': 0, 'tight': 1, 'not known': 2, 'holds': 3 }
const order: readonly Moved['turn'][] = ['worse', 'untold', 'better', 'told', 'same']
/** A hundredth of a threshold is less than any page writes. */
const nothing = 0.01

/** Every link that moved from one build to the other: those that came out worse first, then those that were mended, then by how far they moved. */
export function movedMargins(before: readonly Weighed[], after: readonly Weighed[]): readonly Moved[] {
  const others = new Map(after.map((w) => [w.id, w]))
  return before.flatMap((a): Moved[] => {
    const b = others.get(a.id)
    if (!b || a.margin.always) return []
    const change = a.left === null || b.left === null ? null : b.left === a.left ? 0 : b.left - a.left
    const steps = change === null ? 0 : change / (a.tight || 1)
    const turn = turnOf(a.state, b.state)
    return turn === 'same' && Math.abs(steps) < nothing ? [] : [{ id: a.id, before: a, after: b, change, steps, turn }]
  }).sort((a, b) => order.indexOf(a.turn) - order.indexOf(b.turn) || Math.abs(b.steps) - Math.abs(a.steps))
}

function turnOf(a: State, b: State): Moved['turn'] {
  if (a === b) return 'same'
  if (b === 'not known') return 'untold'
  if (a === 'not known') return 'told'
  return rank[b] > rank[a] ? 'better' : 'worse'
}

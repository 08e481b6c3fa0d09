import { isQuantity, type Points, type Quantity } from '../quantity/quantity.ts'
import { shownUnit, write, writeNumber, type System } from '../quantity/write.ts'
import { type Field } from './field.ts'
import { type Margin, type Remedy, type State } from './margin.ts'
import { type Weighed } from './margins.ts'
import { setEntry, valueAt, type Sheet } from './sheet.ts'

/** Solves and weighs a sheet: passed in, so that this file knows nothing of the whole model. */
export type Weigher = (sheet: Sheet) => readonly Weighed[]

/** How far one remedy must move, and what it pushes. */
export type Cure = {
  readonly margin: string
  readonly field: string
  readonly says: string
  /** The value that just clears the threshold; a whole curve is moved by a factor. null: no value in range does. */
  readonly value: number | Points | null
  readonly from: number | Points
  /** The state reached at that value, and the best that was met when it does not hold. */
  readonly state: State
  /** Links that this remedy makes worse, with the state they come to. */
  readonly pushes: readonly { readonly id: string; readonly title: string; readonly state: State }[]
  /** The sheet with the remedy applied: what the reader would adopt. */
  readonly sheet: Sheet | null
}

/** Whether a link has all it asks: holding, or as good as this model may ever call it. */
export const clears = (w: Weighed): boolean => w.state === 'holds' || (w.margin.best === 'tight' && w.state === 'tight' && (w.left ?? -1) >= w.tight)
/** Links for which a remedy is worth working out. */
export const wantsCure = (w: Weighed): boolean => (w.state === 'short' || w.state === 'tight') && !clears(w)

const rank: Readonly<Record<State, number>> = { 'holds': 0, 'not known': 1, 'tight': 2, 'short': 3 }

/** Every natural remedy of a margin that does not hold, each carried through the whole coupled model. */
export function* remediesFor(margin: Margin, sheet: Sheet, weigher: Weigher): Generator<Cure> {
  const before = weigher(sheet)
  for (const remedy of margin.remedies) {
    const cure = cureBy(remedy, margin, sheet, before, weigher)
    if (cure) yield cure
  }
}

function cureBy(remedy: Remedy, margin: Margin, sheet: Sheet, before: readonly Weighed[], weigher: Weigher): Cure | null {
  const from = valueAt(sheet, remedy.field)
  const lever = leverOf(remedy, from)
  if (lever === null) return null
  const at = (t: number): { sheet: Sheet; all: readonly Weighed[]; own: Weighed } => {
    const moved = setEntry(sheet, remedy.field.path, { ...sheet.entries[remedy.field.path], value: lever(t) })
    const all = weigher(moved)
    return { sheet: moved, all, own: all.find((w) => w.id === margin.id)! }
  }
  // A coarse walk finds the first step that clears it; halving finds how little is enough.
  const steps = 16
  let low = 0, high = NaN
  let best = before.find((w) => w.id === margin.id)!
  for (let i = 1; i <= steps; i++) {
    const { own } = at(i / steps)
    if ((own.left ?? -Infinity) > (best.left ?? -Infinity)) best = own
    if (clears(own)) { high = i / steps; low = (i - 1) / steps; break }
  }
  const common = { margin: margin.id, field: remedy.field.path, says: remedy.says, from: from as number | Points }
  if (Number.isNaN(high)) return { ...common, value: null, state: best.state, pushes: [], sheet: null }
  for (let i = 0; i < 9; i++) { const middle: number = (low + high) / 2; if (clears(at(middle).own)) high = middle; else low = middle }
  const done = at(high)
  const pushes = done.all.flatMap((w) => {
    const was = before.find((b) => b.id === w.id)!
    return w.id !== margin.id && rank[w.state] > rank[was.state] && w.state !== 'not known' ? [{ id: w.id, title: w.margin.title, state: w.state }] : []
  })
  return { ...common, value: lever(high), state: done.own.state, pushes, sheet: done.sheet }
}

/** From 0 (as it stands) to 1 (as far as is sensible): the value of the field. Curves move as a whole, up to half or half as much again, inside what its quantity can be. */
function leverOf({ field, move }: Remedy, from: unknown): ((t: number) => number | Points) | null {
  if (isQuantity(field.shape)) {
    if (typeof from !== 'number') return null
    const [low, high] = field.shape.range
    const end = move === 'up' ? Math.max(high, from) : Math.min(low, from)
    if (end === from) return null
    const whole = field.shape.whole
    return (t) => (whole ? Math.round(from + (end - from) * t) : from + (end - from) * t)
  }
  if (field.shape.kind !== 'curve' || typeof from !== 'object' || from === null) return null
  const points = from as Points
  const [low, high] = field.shape.y.range
  // The whole curve by one factor, as far as its quantity goes: a lambda of a half is no remedy.
  const most = move === 'up' ? Math.min(1.5, high / Math.max(...points.y)) : Math.max(0.5, Math.min(...points.y) > 0 && low > 0 ? low / Math.min(...points.y) : 0.5)
  if (move === 'up' ? most <= 1 : most >= 1) return null
  return (t) => ({ x: points.x, y: points.y.map((y) => y * (1 + t * (most - 1))) })
}

/** A cure in words: from what to what, and what it pushes. */
export function cureSentence(cure: Cure, field: Field, system: System = 'metric'): string {
  const name = field.label ?? field.shape.name
  const says = /[.!?]$/.test(cure.says) ? cure.says : `${cure.says}.`
  if (cure.value === null) return `${says} No ${lower(name)} in range is enough by itself.`
  const pushes = cure.pushes.length === 0 ? '' : ` It makes ${cure.pushes.map((p) => `${lower(p.title)} ${p.state}`).join(', ')}.`
  if (typeof cure.value === 'number') {
    const q = field.shape as Quantity
    const unit = shownUnit(q, system)
    return `${says} ${name}: from ${write(cure.from as number, q, unit)} to ${write(cure.value, q, unit)}.${pushes}`
  }
  const factor = cure.value.y[0]! / (cure.from as Points).y[0]!
  return `${says} ${name}: the whole curve times ${writeNumber(factor, 3)}.${pushes}`
}
const lower = (text: string): string => (/^[A-Z][a-z]/.test(text) ? text[0]!.toLowerCase() + text.slice(1) : text)

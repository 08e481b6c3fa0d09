import { isQuantity } from '../quantity/quantity.ts'
import { type Field } from './field.ts'
import { type Weighed } from './margins.ts'
import { type Weigher } from './remedies.ts'
import { fromAt, setEntry, valueAt, type Sheet } from './sheet.ts'

/** One measurement worth making: the field, why, and the links it would settle or move. */
export type Worth = {
  readonly field: string
  readonly kind: 'unknown' | 'guess'
  /** Links that are not known without it, or whose state lies within reach of its doubt. */
  readonly settles: readonly string[]
  /** The largest move of a margin, in its own thresholds, for the field's doubt. */
  readonly moves: number
}

/** How many tolerance steps a number may be out, by where it came from. */
export const doubt = { measured: 1, maker: 2, common: 4, guess: 6 } as const

/**
 * Unknowns and guesses ranked by how much they move the worst margins; what one honest measurement would settle comes first.
 * @param fields those to weigh: every field of the sheet
 */
export function* measureNext(fields: readonly Field[], sheet: Sheet, weigher: Weigher): Generator<Worth | null> {
  const before = weigher(sheet)
  const unknown = new Map<string, string[]>()
  for (const w of before) for (const path of w.missing) unknown.set(path, [...(unknown.get(path) ?? []), w.id])
  for (const [field, settles] of [...unknown].sort((a, b) => b[1].length - a[1].length)) yield { field, kind: 'unknown', settles, moves: Infinity }

  for (const field of fields) {
    const value = valueAt(sheet, field)
    const from = fromAt(sheet, field)
    if (!isQuantity(field.shape) || typeof value !== 'number' || from === 'measured' || field.shape.whole) { yield null; continue }
    const out = field.shape.step * doubt[from]
    let moves = 0
    const settles = new Set<string>()
    for (const to of [value + out, value - out]) {
      if (to < field.shape.range[0] || to > field.shape.range[1]) continue
      for (const [i, after] of match(before, weigher(setEntry(sheet, field.path, { ...sheet.entries[field.path], value: to })))) {
        if (i.left === null || after.left === null || !Number.isFinite(i.left) || !Number.isFinite(after.left)) continue
        // A link far inside its threshold is not moved into doubt by a small change; one near it is.
        const nearness = 1 / (1 + Math.max(0, i.left / (i.tight || 1) - 1))
        moves = Math.max(moves, (Math.abs(after.left - i.left) / (i.tight || 1)) * nearness)
        if (after.state !== i.state) settles.add(i.id)
      }
    }
    yield moves > 0.02 ? { field: field.path, kind: 'guess', settles: [...settles], moves } : null
  }
}
function* match(before: readonly Weighed[], after: readonly Weighed[]): Generator<[Weighed, Weighed]> {
  const byId = new Map(after.map((w) => [w.id, w]))
  for (const w of before) { const other = byId.get(w.id); if (other) yield [w, other] }
}

/** In the order in which to make them: by how many links each would settle, an unknown before a guess that settles as many, then by what it moves. */
export const rankWorth = (found: readonly (Worth | null)[]): readonly Worth[] => found.filter((w): w is Worth => w !== null)
  .sort((a, b) => b.settles.length - a.settles.length || (a.kind === b.kind ? (a.kind === 'unknown' ? 0 : b.moves - a.moves) : a.kind === 'unknown' ? -1 : 1))
